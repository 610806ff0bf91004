import { Validator } from '@seriousme/openapi-schema-validator';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { z } from 'zod';
import { Served } from './serve.ts';

let served: Served;
beforeAll(async () => {
  served = await Served.start();
});
afterAll(() => served.close());

const documentShape = z.looseObject({
  openapi: z.string(),
  paths: z.record(z.string(), z.record(z.string(), z.looseObject({ responses: z.unknown() }))),
  components: z.looseObject({ schemas: z.record(z.string(), z.unknown()) }),
});
const read = async () => documentShape.parse((await served.call('/api/openapi.json')).json);

/** Held against the JSON Schema of the OpenAPI Initiative for version 3.1. */
test('is a valid OpenAPI 3.1 document', async () => {
  const document = await read();
  expect(document.openapi).toMatch(/^3\.1\.\d+$/);
  const validator = new Validator();
  const { valid, errors } = await validator.validate(structuredClone(document));
  expect(errors).toBeUndefined();
  expect(valid).toBe(true);
  expect(validator.version).toBe('3.1');
  const broken = await new Validator().validate({ ...structuredClone(document), paths: 7 });
  expect(broken.valid).toBe(false);
});

test('lists every route', async () => {
  const { paths } = await read();
  const routes = Object.entries(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
  );
  expect(routes.sort()).toEqual([
    'DELETE /api/devices/{device}',
    'GET /api/about',
    'GET /api/blobs/{hash}',
    'GET /api/devices',
    'GET /api/openapi.json',
    'GET /api/questions',
    'GET /api/studies',
    'GET /api/studies/{study}/answers',
    'GET /api/studies/{study}/bundle',
    'GET /api/studies/{study}/changes',
    'GET /api/studies/{study}/report.pdf',
    'POST /api/ask',
    'POST /api/bundles',
    'POST /api/pairing',
    'POST /api/studies',
    'POST /api/studies/{study}/changes',
    'POST /api/studies/{study}/here',
    'POST /api/studies/{study}/import',
    'PUT /api/blobs',
  ]);
});

test('every reference leads somewhere, every route can be refused and can fail', async () => {
  const document = await read();
  const names = [...JSON.stringify(document).matchAll(/"#\/components\/schemas\/(\w+)"/g)];
  for (const [, name = ''] of names) expect(document.components.schemas).toHaveProperty(name);
  for (const methods of Object.values(document.paths))
    for (const { responses } of Object.values(methods))
      expect(Object.keys(responses as object)).toEqual(['200', '4XX', '5XX']);
});
