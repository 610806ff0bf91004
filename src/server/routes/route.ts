import type {
  FastifyBaseLogger,
  FastifyInstance,
  FastifyTypeProvider,
  RawReplyDefaultExpression,
  RawRequestDefaultExpression,
  RawServerDefault,
} from 'fastify';
import { z } from 'zod';
import type { Library } from '../../app/index.ts';
import { defectAnswer, type Frozen, refusalsAnswer } from '../contract.ts';

/** Types requests and answers by the zod schemas of a route; both are read-only. */
interface BySchema extends FastifyTypeProvider {
  validator: this['schema'] extends z.ZodType ? Frozen<z.output<this['schema']>> : unknown;
  serializer: this['schema'] extends z.ZodType ? Frozen<z.output<this['schema']>> : unknown;
}

/** Where routes are added. */
export type Scope = FastifyInstance<
  RawServerDefault,
  RawRequestDefaultExpression,
  RawReplyDefaultExpression,
  FastifyBaseLogger,
  BySchema
>;

/** Adds the routes of one subject. */
export type AddRoutes = (scope: Scope, library: Library) => void;

/** How every route can fail. */
export const FAILURES = {
  '4xx': refusalsAnswer,
  '5xx': z.union([refusalsAnswer, defectAnswer]),
} as const;

/** A body that is a file: any bytes. */
export const rawBody = z.unknown();

/** An answer of bytes, for the OpenAPI document. */
export const bytesAnswer = (mediaType: string, description: string) => ({
  description,
  content: { [mediaType]: { schema: z.string().meta({ format: 'binary' }) } },
});
