/**
 * schema: the shapes of a study's record as data that comes from outside is held to.
 *
 * One set for every door: HTTP, the OpenAPI document, study bundles and their published JSON
 * Schema. The types themselves are those of quantity and study; a test of types holds the two
 * together.
 * Depends on quantity and study, and on zod. Stays away from hosts, storage and calculation, so
 * that pages may use it too.
 */
export * from './bundle.ts';
export * from './changes.ts';
export * from './values.ts';
