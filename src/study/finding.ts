/** Where something is: in a study, in a file, or in what was handed in. */
export interface Place {
  readonly study?: string;
  /** Node label or id. */
  readonly subject?: string;
  readonly property?: string;
  readonly reading?: string;
  readonly file?: string;
  /** 1-based row of a file, its heading row being 1. */
  readonly row?: number;
  /** Column heading, or the name of an input. */
  readonly column?: string;
}

/** About the data: returned and shown, does not stop the rest. */
export interface Finding {
  readonly code: string;
  readonly level: 'note' | 'doubt' | 'gap';
  readonly place: Place;
  /** The value found, as written. */
  readonly value?: string;
  /** What is the matter, in words. */
  readonly what: string;
  /** What to do next. */
  readonly next: string;
}

/** One table from refusal to HTTP status and exit code; every refusal the tool can give is here. */
export const REFUSALS = {
  'bad-value': { status: 422, exit: 2 },
  'bad-table': { status: 422, exit: 2 },
  'bad-bundle': { status: 422, exit: 2 },
  'bad-change': { status: 422, exit: 2 },
  'bad-call': { status: 400, exit: 2 },
  'not-found': { status: 404, exit: 3 },
  conflict: { status: 409, exit: 4 },
  'unlike-conditions': { status: 409, exit: 4 },
  'out-of-range': { status: 422, exit: 2 },
  'no-answer': { status: 422, exit: 5 },
  'not-allowed': { status: 403, exit: 6 },
  'not-signed-in': { status: 401, exit: 6 },
  'too-large': { status: 413, exit: 2 },
  busy: { status: 503, exit: 7 },
  'read-only': { status: 503, exit: 7 },
  'disk-full': { status: 507, exit: 7 },
} as const satisfies Record<string, { status: number; exit: number }>;

export type RefusalCode = keyof typeof REFUSALS;

/** A request that can't be served. */
export interface Refusal {
  readonly code: RefusalCode;
  readonly place: Place;
  readonly value?: string;
  readonly why: string;
  readonly next: string;
}

/** Carries one or more refusals up to the door that answers. */
export class RefusalError extends Error {
  readonly refusals: readonly [Refusal, ...Refusal[]];
  constructor(first: Refusal, ...more: Refusal[]) {
    super(refusalText(first));
    this.name = 'RefusalError';
    this.refusals = [first, ...more];
  }
}

/** "parts.csv, row 7, column mass_kg: …" */
export function placeText(place: Place): string {
  const at = [
    place.study,
    place.subject,
    place.property,
    place.file,
    place.row === undefined ? undefined : `row ${place.row}`,
    columnText(place),
    place.reading === undefined ? undefined : `reading ${place.reading}`,
  ];
  return at.filter((part) => part !== undefined && part !== '').join(', ');
}

/** Without a file or a row it is no column but the name of an input, a field or an option. */
function columnText({ file, row, column }: Place): string | undefined {
  if (column === undefined || (file === undefined && row === undefined)) return column;
  return `column ${column}`;
}

export function refusalText(r: Refusal): string {
  const at = placeText(r.place);
  const value = r.value === undefined ? '' : ` (found: ${JSON.stringify(r.value)})`;
  return `${at ? `${at}: ` : ''}${r.why}${value}. ${r.next}`;
}
