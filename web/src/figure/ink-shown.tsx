import { type Fill, type Ink, SIZES, type Spot, type Words } from '../../../src/drawing/index.ts';

/** Capitals of the page's narrow type are this high, of its size. */
const CAPITALS = 0.7;

/** One line, area or text of a picture. Pens and tones are classes of figure.css. */
export function InkShown({ ink, hatches }: { readonly ink: Ink; readonly hatches: string }) {
  if (ink.i === 'words') return <TextShown words={ink} />;
  if (ink.i === 'line')
    return <polyline className={penClass(ink.pen)} points={pointsText(ink.spots)} />;
  const fill = fillOf(ink.fill, hatches);
  if (ink.i === 'circle')
    return (
      <circle
        className={penClass(ink.pen)}
        style={{ fill }}
        cx={round(ink.at[0])}
        cy={round(ink.at[1])}
        r={round(ink.r)}
      />
    );
  const path = ink.rings.map((ring) => `M${pointsText(ring)}Z`).join('');
  return <path className={penClass(ink.pen)} style={{ fill }} d={path} fillRule="evenodd" />;
}

function TextShown({ words }: { readonly words: Words }) {
  const { at, text, size, tone, anchor, turned, onPaper } = words;
  const [x, y] = [round(at[0]), round(at[1])];
  return (
    <text
      className={`tone-${tone} ${onPaper ? 'on-paper' : ''}`}
      fontSize={SIZES[size]}
      textAnchor={anchor}
      x={x}
      y={y}
      dy={(CAPITALS / 2) * SIZES[size]}
      {...(turned ? { transform: `rotate(-90 ${x} ${y})` } : {})}
    >
      {text}
    </text>
  );
}

const penClass = (pen: string): string => `pen-${pen.replace(' ', '-')}`;

const PLAIN: Partial<Record<Fill, string>> = {
  none: 'none',
  paper: 'var(--paper)',
  ink: 'var(--ink)',
};
const fillOf = (fill: Fill, hatches: string): string =>
  PLAIN[fill] ?? `url(#${hatches}-${fill.replace(' ', '-')})`;

const pointsText = (spots: readonly Spot[]): string =>
  spots.map(([x, y]) => `${round(x)} ${round(y)}`).join(' ');

/** To a tenth of a pixel, so that the page holds no idle digits. */
const round = (x: number): number => Math.round(10 * x) / 10;
