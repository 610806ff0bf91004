import { type Finding, placeText } from '../../../src/study/index.ts';

const LEVELS: Readonly<Record<Finding['level'], string>> = {
  gap: 'missing',
  doubt: 'doubt',
  note: 'note',
};
/** Findings in sight before the rest folds away. */
const IN_SIGHT = 6;

/** What is found about the data, each with its place and what to do next. */
export function FindingsList({ findings }: { readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  const [seen, rest] = [findings.slice(0, IN_SIGHT), findings.slice(IN_SIGHT)];
  return (
    <div className="findings">
      <FindingItems findings={seen} />
      {rest.length > 0 && (
        <details>
          <summary>{rest.length} more</summary>
          <FindingItems findings={rest} />
        </details>
      )}
    </div>
  );
}

const FindingItems = ({ findings }: { readonly findings: readonly Finding[] }) => (
  <ul>
    {findings.map((f) => {
      const place = placeText(f.place);
      return (
        <li key={`${f.code} ${place} ${f.value ?? ''}`}>
          <b className={f.level === 'gap' ? 'open' : ''}>{LEVELS[f.level]}</b>
          {place !== '' && <> {place}</>}: {f.what}
          {f.value !== undefined && f.value !== '' && <> ({f.value})</>}. <em>{f.next}</em>
        </li>
      );
    })}
  </ul>
);
