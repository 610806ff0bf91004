import { propertyWords } from '../../../src/study/index.ts';
import { numberText, shareText } from '../parts/number-text.ts';
import { useWhy } from '../parts/why.tsx';
import type { Contribution, SheetOut } from '../worker/answer-sheet.ts';
import { hatchOf, WHAT_WORDS } from './contribution-words.ts';

/** Where the spread of an output comes from: shares of its variance, the largest first. */
export function Contributions({ out }: { readonly out: SheetOut }) {
  if (out.contributions.length === 0)
    return <p className="soft">Nothing in it has a spread that is known.</p>;
  return (
    <table className="contributions">
      <caption>Where the spread of {out.meaning} comes from, as shares of its variance</caption>
      <thead>
        <tr>
          <th scope="col">from</th>
          <th scope="col" className="num">
            ±
          </th>
          <th scope="col" className="num">
            share
          </th>
        </tr>
      </thead>
      <tbody>
        {out.contributions.map((c) => (
          <ContributionRow key={`${c.label} ${c.what}`} out={out} contribution={c} />
        ))}
        {out.others.count > 0 && (
          <tr>
            <th scope="row">
              {out.others.count} others
              <Bar share={out.others.share} hatch="rest" />
            </th>
            <td />
            <td className="num">{shareText(out.others.share)}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}

function ContributionRow({ out, contribution }: { out: SheetOut; contribution: Contribution }) {
  const { label, what, c, share, of } = contribution;
  const open = useWhy();
  const size = numberText({ x: 0, u: Math.abs(c), kind: out.kind, unit: out.unit });
  return (
    <tr>
      <th scope="row">
        {of ? (
          <button
            type="button"
            className="link"
            onClick={() => open({ of: 'cell', subject: of.subject, property: of.property })}
          >
            {spoken(label, of.property)}
          </button>
        ) : (
          label
        )}{' '}
        <small>{WHAT_WORDS[what]}</small>
        <Bar share={share} hatch={hatchOf(what)} />
      </th>
      <td className="num">
        {size.spread} {size.unit}
      </td>
      <td className="num">{shareText(share)}</td>
    </tr>
  );
}

/** Labels of readings end in the property's id; people read its words. */
const spoken = (label: string, property: string): string =>
  label.replace(`, ${property}`, `, ${propertyWords(property)}`);

const Bar = ({ share, hatch }: { share: number; hatch: string }) => (
  <span className="bar" aria-hidden="true">
    <span className={`hatch-${hatch}`} style={{ inlineSize: `${100 * share}%` }} />
  </span>
);
