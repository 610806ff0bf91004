import { afterEach, describe, expect, it, vi } from 'vitest';
import { ensureDebian, findBinary } from '../../scripts/ensure-debian.ts';

describe('programs that tests need', () => {
  afterEach(() => vi.unstubAllEnvs());

  it('are found on the PATH', () => {
    expect(findBinary('node')).toMatch(/\/node$/);
    expect(ensureDebian('node', 'nodejs')).toBe(findBinary('node'));
    expect(findBinary('no-such-program')).toBeUndefined();
  });

  it('that can be neither found nor installed are named in one line, with what to install', () => {
    vi.stubEnv('PATH', '/nowhere');
    const ask = () => ensureDebian('pdfinfo', 'poppler-utils');
    expect(ask).toThrow(
      /^pdfinfo is missing: install the package poppler-utils .*run the command again\.$/,
    );
  });
});
