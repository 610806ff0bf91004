import type { Influence, Sampled, SampledOut } from '../../../src/engine/index.ts';
import { printedInterval, printedSpread } from '../../../src/quantity/index.ts';
import { NumberShown } from '../parts/number.tsx';
import { shareText } from '../parts/number-text.ts';
import { HistogramShown } from './histogram-shown.tsx';

/** What samples say of each result, and whether they confirm the linear one. */
export const SampledTable = ({ sampled }: { readonly sampled: Sampled }) => (
  <>
    <p className="soft">
      {sampled.samples.toLocaleString('en')} samples, seed {sampled.seed},{' '}
      {sampled.settled ? 'settled' : 'ended before it had settled'}; intervals hold{' '}
      {shareText(sampled.coverage)} (JCGM 101)
    </p>
    {sampled.outs.map((out) => (
      <SampledResult key={out.name} out={out} />
    ))}
  </>
);

function SampledResult({ out }: { readonly out: SampledOut }) {
  const { mean, u, kind, unit, symmetric, shortest, validated, decision, none } = out;
  const interval = (of: typeof symmetric) => printedInterval(of, u, { kind, unit });
  const size = (x: number) => printedSpread(x, kind, unit);
  return (
    <div className="sampled">
      <h4>
        {out.meaning}: <NumberShown shown={{ x: mean, u, kind, unit }} how="calculated" of="mean" />
        {decision && <b> {decision.word}</b>}
      </h4>
      <HistogramShown out={out} />
      <dl>
        <Line term="interval" text={interval(symmetric)} />
        <Line term="shortest" text={interval(shortest)} />
        <Line term="linear" text={interval(validated.linear)} />
      </dl>
      <p>
        <b className={validated.holds ? '' : 'open'}>
          {validated.holds ? 'linear result confirmed' : 'linear result not confirmed'}
        </b>
        : ends up to {size(Math.max(validated.atLow, validated.atHigh))} apart,{' '}
        {size(validated.tolerance)} allowed
      </p>
      {none > 0 && (
        <p className="open">no number in {shareText(none)} of the samples, which are left out</p>
      )}
      {out.influences && <Influences influences={out.influences} />}
    </div>
  );
}

const Line = ({ term, text }: { readonly term: string; readonly text: string }) => (
  <div>
    <dt>{term}</dt>
    <dd className="digits">{text}</dd>
  </div>
);

const Influences = ({ influences }: { readonly influences: readonly Influence[] }) => (
  <table>
    <caption>Shares of the variance, of a cause by itself and with all it does with others</caption>
    <thead>
      <tr>
        <th scope="col">from</th>
        <th scope="col" className="num">
          by itself
        </th>
        <th scope="col" className="num">
          with others
        </th>
      </tr>
    </thead>
    <tbody>
      {influences.map(({ variable, first, total }) => (
        <tr key={variable?.id ?? 'others'}>
          <th scope="row">{variable?.label ?? 'all others together'}</th>
          <td className="num">{shareText(Math.max(first, 0))}</td>
          <td className="num">{shareText(Math.max(total, 0))}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
