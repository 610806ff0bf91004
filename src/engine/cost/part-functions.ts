import type { TermColumn } from '../method.ts';

/** What no function was named for. */
export const NOT_ALLOCATED = 'not allocated';

/** Functions of a part and their shares, or of the assembly it belongs to: "seal 60 %; carry 40 %". */
export const partFunctions: TermColumn = {
  ...{ in: 'term', name: 'functions', where: 'functions of the part, else of its assembly' },
  meaning: 'functions that it serves and their shares of its cost, e.g. "seal 60 %; carry 40 %"',
  find: (at, row) => {
    const own = at.text(row, 'cost.functions');
    const parent = at.view.node(row)?.parent;
    return own.text === '' && parent ? at.text(parent, 'cost.functions') : own;
  },
};

/** Shares by function; they sum to 1: what is left is not allocated, more than all is scaled down. */
export function sharesOf(text: string): ReadonlyMap<string, number> {
  const found = [...text.matchAll(/([^;%]+?)\s+(\d+(?:\.\d+)?)\s*%/g)].map(
    ([, name = '', share = '0']) => [name.trim(), Number(share) / 100] as const,
  );
  const sum = found.reduce((s, [, share]) => s + share, 0);
  const scale = Math.max(1, sum);
  const shares = new Map<string, number>();
  for (const [name, share] of found) shares.set(name, (shares.get(name) ?? 0) + share / scale);
  if (sum < 1 - 1e-12) shares.set(NOT_ALLOCATED, 1 - sum);
  return shares;
}
