import { z } from 'zod';
import { arrived } from './changes.ts';
import { id, sha256 } from './values.ts';

/** Version of the form of a bundle; a reader refuses any other. */
export const BUNDLE_VERSION = 1;

const bytes = z.int().min(0);

/** What `manifest.json` of a bundle says. */
export const bundleManifest = z
  .strictObject({
    format: z.literal('hoistside-bundle'),
    version: z.literal(BUNDLE_VERSION),
    study: id.meta({ description: 'Id of the study' }),
    title: z.string(),
    program: z.string().meta({ description: 'Version of the program that wrote the bundle' }),
    made: z.string().meta({ description: 'ISO 8601, UTC' }),
    changes: z
      .strictObject({ count: z.int().min(0), bytes, sha256 })
      .meta({ description: 'Of changes.ndjson, as it is once unpacked' }),
    blobs: z.array(z.strictObject({ hash: sha256, bytes })).meta({
      description: 'Each is the file blobs/<hash>, named by the SHA-256 of its bytes',
    }),
    missing: z.array(sha256).meta({
      description: 'Blobs that the study names and the library did not have, as yet',
    }),
  })
  .meta({ id: 'BundleManifest' });
export type BundleManifest = z.infer<typeof bundleManifest>;

/** Enough to tell a bundle of another version from something that is none. */
export const bundleVersion = z.looseObject({
  format: z.literal('hoistside-bundle'),
  version: z.int(),
});

/** A line of `changes.ndjson`: a change with its arrival. */
export const bundleLine = arrived;

const whole = z.strictObject({ manifest: bundleManifest, changes: z.array(bundleLine) }).meta({
  title: 'Hoistside study bundle, version 1',
  description:
    'A bundle is a zip with manifest.json, changes.ndjson and blobs/<sha256>. `manifest` is what manifest.json holds, `changes` the lines of changes.ndjson: UTF-8, one JSON value a line with the keys of every object in order, in the order of arrival. Numbers are in coherent SI units. Nothing else may be in the zip.',
});

/** The published JSON Schema (2020-12) of a bundle. */
export const bundleJsonSchema = (): object => z.toJSONSchema(whole, { target: 'draft-2020-12' });
