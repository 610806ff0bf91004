import type { TermInput } from '../method.ts';

/** What an allowance may be a share of: one percentage gives two times. */
export const ALLOWANCE_BASES = ['normal time', 'shift time'] as const;
export type AllowanceBase = (typeof ALLOWANCE_BASES)[number];

export const allowanceBase: TermInput = {
  in: 'term',
  name: 'base',
  meaning: 'what the allowance is a share of: there is no usual choice',
  options: ALLOWANCE_BASES,
  where: 'base of the allowance, of the vehicle',
  find: (at) => at.text(at.subject, 'work.allowanceBase'),
};
