/** The number of a revision, "22" of "22 · 680904f0": what tells records apart is for the report. */
export const revisionNumber = (revision: string): string => revision.split(' ')[0] ?? '';
