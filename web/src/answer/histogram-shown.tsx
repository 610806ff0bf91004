import type { SampledOut } from '../../../src/engine/index.ts';

const [WIDTH, HEIGHT, FOOT] = [400, 90, 34];

/** How the samples lie, with their interval and that of the linear result below. */
export function HistogramShown({ out }: { readonly out: SampledOut }) {
  const { histogram, symmetric, validated, mean } = out;
  const low = Math.min(histogram.low, validated.linear.low);
  const high = Math.max(histogram.high, validated.linear.high);
  const at = (x: number) => (WIDTH * (x - low)) / (high - low);
  const most = Math.max(...histogram.counts);
  const step = (histogram.high - histogram.low) / histogram.counts.length;
  const top = histogram.counts.map((count, i) => {
    const [from, to] = [histogram.low + i * step, histogram.low + (i + 1) * step].map(at);
    const y = HEIGHT - (HEIGHT * count) / most;
    return `L${from},${y} L${to},${y}`;
  });
  const first = at(histogram.low);
  const whisker = (y: number, of: typeof symmetric) =>
    `M${at(of.low)},${y} H${at(of.high)} M${at(of.low)},${y - 4} v8 M${at(of.high)},${y - 4} v8`;
  return (
    <svg
      className="histogram"
      viewBox={`-2 -2 ${WIDTH + 80} ${HEIGHT + FOOT + 4}`}
      role="img"
      aria-label={`How the samples of ${out.meaning} lie; in numbers below`}
    >
      <path className="bars" d={`M${first},${HEIGHT} ${top.join(' ')} V${HEIGHT} Z`} />
      <path className="axis" d={`M0,${HEIGHT} H${WIDTH}`} />
      <path className="mean" d={`M${at(mean)},0 V${HEIGHT}`} />
      <path className="whisker" d={whisker(HEIGHT + 11, symmetric)} />
      <path className="whisker linear" d={whisker(HEIGHT + 26, validated.linear)} />
      <text x={WIDTH + 8} y={HEIGHT + 15}>
        samples
      </text>
      <text x={WIDTH + 8} y={HEIGHT + 30}>
        linear
      </text>
    </svg>
  );
}
