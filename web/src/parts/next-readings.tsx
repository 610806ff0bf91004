import type { MeasureNext, NextReading, OpenThing } from '../../../src/engine/index.ts';
import { printedSpread } from '../../../src/quantity/index.ts';
import { useSelection } from '../app/selection.tsx';
import { shareText } from './number-text.ts';
import { useWhy } from './why.tsx';

export interface NextReadingsProps {
  readonly next: MeasureNext;
  readonly readings: readonly NextReading[];
}

/** Readings worth taking: each leads to where it is recorded, and says what it would do. */
export const NextReadings = ({ next, readings }: NextReadingsProps) => (
  <>
    {readings.map((reading) => (
      <div className="entry" key={`${reading.label} ${reading.why}`}>
        <h3>
          <ReadingLink reading={reading} />
          {reading.why === 'spread' ? (
            <em>{shareText(reading.perMinute)} a min</em>
          ) : (
            <em className="open">{reading.why}</em>
          )}
        </h3>
        <p className="soft">{withWhat(reading)}</p>
        <Effects reading={reading} open={next.open} />
      </div>
    ))}
  </>
);

/** "scale D, about 3 min". */
const withWhat = ({ instrument }: NextReading): string =>
  instrument
    ? `${instrument.label}, about ${Number(instrument.minutes.toPrecision(2))} min`
    : 'no instrument at hand';

function ReadingLink({ reading: { label, of } }: { readonly reading: NextReading }) {
  const { select } = useSelection();
  const open = useWhy();
  if (!of) return <>{label}</>;
  const go = () => {
    select(of.subject);
    open({ of: 'cell', subject: of.subject, property: of.property });
  };
  return (
    <button type="button" className="link" onClick={go}>
      {label}
    </button>
  );
}

interface EffectsProps {
  readonly reading: NextReading;
  readonly open: readonly OpenThing[];
}

/** What it would do to each open thing: the largest in sight. */
function Effects({ reading: { effects }, open }: EffectsProps) {
  const words = effects.flatMap(({ open: i, u, after }) => {
    const thing = open[i];
    return thing ? [effectWords(thing, u, after)] : [];
  });
  const [first, ...rest] = words;
  return (
    <>
      {first && <p>{first}</p>}
      {rest.length > 0 && (
        <details>
          <summary>and {rest.length} more</summary>
          {rest.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </details>
      )}
    </>
  );
}

/** "gap, parts less scales: ± 1.02 kg to ± 0.96 kg". */
function effectWords({ about, words, kind, unit }: OpenThing, u?: number, after?: number): string {
  const what = about === 'claim' ? `“${words}”` : words;
  if (u === undefined || after === undefined) return what;
  return `${what}: ± ${printedSpread(u, kind, unit)} to ± ${printedSpread(after, kind, unit)}`;
}
