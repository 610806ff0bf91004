import type { WrittenInputs } from '../../../src/engine/index.ts';

/** Inputs of a form without what was left empty: empty texts, and tables without a row. */
export const onlyWritten = (written: WrittenInputs): WrittenInputs =>
  Object.fromEntries(
    Object.entries(written).filter(([, value]) =>
      typeof value === 'string' ? value.trim() !== '' : value.length > 0,
    ),
  );
