import swagger from '@fastify/swagger';
import type { FastifyInstance } from 'fastify';
import { jsonSchemaTransform, jsonSchemaTransformObject } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { type AddRoutes, FAILURES } from './routes/route.ts';

/** Makes the OpenAPI 3.1 document from the schemas of the routes added to `app` after this. */
export async function documentRoutes(app: FastifyInstance): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Hoistside',
        version: '1',
        description:
          'Record, calculation and report for vehicle teardowns. Quantities are in SI; every value has its spread.',
      },
      components: { securitySchemes: { token: { type: 'http', scheme: 'bearer' } } },
      security: [{ token: [] }],
    },
    transform: jsonSchemaTransform,
    transformObject: (document) => oneOfEach(jsonSchemaTransformObject(document)),
  });
}

/** The document is a route like any other, and stands in itself. */
export const addDocument: AddRoutes = (scope) => {
  const document = z.looseObject({ openapi: z.string() });
  scope.get(
    '/openapi.json',
    { schema: { summary: 'This document', response: { 200: document, ...FAILURES } } },
    async () => scope.swagger() as z.infer<typeof document>,
  );
};

/**
 * Each shape comes twice, as `Change` for answers and `ChangeInput` for requests. Ours are alike
 * in both directions, so one name will do.
 */
function oneOfEach<D extends object>(document: D): D {
  const text = JSON.stringify(document).replaceAll(
    /"#\/components\/schemas\/(\w+)Input"/g,
    '"#/components/schemas/$1"',
  );
  return JSON.parse(text, (key, value) => (key === 'schemas' ? withoutInputs(value) : value));
}

function withoutInputs(schemas: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const kept = Object.entries(schemas).filter(([name]) => !name.endsWith('Input'));
  for (const [name, schema] of kept)
    if (JSON.stringify(schemas[`${name}Input`]) !== JSON.stringify(schema))
      throw new TypeError(`${name} is read and written in different shapes`);
  return Object.fromEntries(kept);
}
