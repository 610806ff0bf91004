import { LINE_KEY } from './ways.ts';

/** What the lines under numbers stand for. */
export const LineKey = () => (
  <ul className="line-key" aria-label="Lines under numbers: how a value is known">
    {LINE_KEY.map(({ line, words }) => (
      <li key={line}>
        <span className={`line-sample line-${line}`} aria-hidden="true" />
        {words}
      </li>
    ))}
  </ul>
);
