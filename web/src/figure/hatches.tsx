/** Hatchings of one figure: how each fill of a picture is drawn. */
export const Hatches = ({ id }: { readonly id: string }) => (
  <defs>
    {HATCHES.map(([name, size, path]) => (
      <pattern
        key={name}
        id={`${id}-${name}`}
        width={size}
        height={size}
        patternUnits="userSpaceOnUse"
      >
        <path className="hatch" d={path} />
      </pattern>
    ))}
  </defs>
);

/** Name, side of the square that is repeated, and what is drawn in it. */
const HATCHES: readonly (readonly [string, number, string])[] = [
  ['lines', 6, 'M-1 7L7 -1M-1 1L1 -1M5 7L7 5'],
  ['lines-back', 6, 'M-1 -1L7 7M5 -1L7 1M-1 5L1 7'],
  ['cross', 7, 'M0 7L7 0M0 0L7 7'],
  ['dense-cross', 4, 'M0 4L4 0M0 0L4 4'],
  ['short-lines', 8, 'M1 2H5M4 6H8'],
  ['dots', 7, 'M1.5 2H2.7M5 5.5H6.2'],
  ['levels', 6, 'M0 3H6'],
];
