import type { FastifySchemaCompiler } from 'fastify';
import type { z } from 'zod';
import { type Refusal, RefusalError } from '../study/index.ts';

/** Most things wrong with one request that are worth telling. */
const MOST_TOLD = 20;
const LONGEST_VALUE = 80;

/** Checks each part of a request by its zod schema; what does not fit becomes refusals. */
export const checkSchema: FastifySchemaCompiler<z.ZodType> =
  ({ schema, httpPart }) =>
  (data) => {
    const result = schema.safeParse(data, { reportInput: true });
    if (result.success) return { value: result.data };
    const [first, ...more] = result.error.issues
      .slice(0, MOST_TOLD)
      .map((issue) => refusalOf(issue, httpPart ?? 'request'));
    return first ? { error: new RefusalError(first, ...more) } : { error: result.error };
  };

function refusalOf(issue: z.core.$ZodIssue, part: string): Refusal {
  const { input } = issue;
  return {
    code: 'bad-call',
    place: { column: [part, ...issue.path].join('.') },
    ...(input === undefined ? {} : { value: shortened(input) }),
    why: whyOf(issue),
    next: 'See /api/openapi.json for what this route takes.',
  };
}

function whyOf(issue: z.core.$ZodIssue): string {
  if (issue.code === 'unrecognized_keys')
    return `there is no field named ${issue.keys.map((key) => `"${key}"`).join(', ')} here`;
  if (issue.code === 'invalid_type' && issue.input === undefined) return 'this is missing';
  return `it does not fit: ${issue.message}`;
}

function shortened(input: unknown): string {
  const text = typeof input === 'string' ? input : (JSON.stringify(input) ?? String(input));
  return text.length > LONGEST_VALUE ? `${text.slice(0, LONGEST_VALUE)}…` : text;
}
