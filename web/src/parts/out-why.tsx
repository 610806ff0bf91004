import { Link } from '@tanstack/react-router';
import { formulaOf } from '../../../src/formula/index.ts';
import { addingUp } from '../../../src/quantity/index.ts';
import { placeText } from '../../../src/study/index.ts';
import { Contributions } from '../answer/contributions.tsx';
import { DecisionShown } from '../answer/decision-shown.tsx';
import { useDesk } from '../app/desk-client.ts';
import { onceNamed } from '../worker/node-words.ts';
import { FindingsList } from './findings-list.tsx';
import { FormulaShown } from './formula-shown.tsx';
import { NumberShown } from './number.tsx';
import { Refusals } from './refusals.tsx';

export interface OutOf {
  readonly question: string;
  readonly subject: string;
  readonly output: string;
  readonly onLeave: () => void;
}

/** Where a calculated number comes from: formula, contributions, what is missing, the sources. */
export function OutWhy({ question, subject, output, onLeave }: OutOf) {
  const answer = useDesk(['answer', question, subject], (desk) =>
    desk.answer(question, subject, {}),
  );
  const { data } = answer;
  const out = data?.outs.find((o) => o.name === output);
  if (!data || !out) return <Refusals error={answer.error} />;
  return (
    <section className="why">
      <h3>
        {out.meaning} <FormulaShown formula={formulaOf(out.symbol)} />
      </h3>
      <p className="soft">
        {data.wording} Of {onceNamed(data.basis.subject ?? '')}.
      </p>
      <p className="why-value">
        <NumberShown
          shown={out}
          how="calculated"
          of={out.meaning}
          beside={addingUp(out, data.outs)}
        />
      </p>
      <p>
        Known as <b>calculated</b>: <FormulaShown formula={formulaOf(out.shown)} />
      </p>
      {out.decision && (
        <DecisionShown decision={out.decision} kind={out.kind} unit={out.unit} open />
      )}
      {out.u === 'incomplete' && (
        <div className="open">
          <ul>
            {out.missing.map((p) => (
              <li key={placeText(p)}>missing: {placeText(p)}</li>
            ))}
            {out.unknownSpread.map((p) => (
              <li key={placeText(p)}>spread not known: {placeText(p)}</li>
            ))}
          </ul>
        </div>
      )}
      {out.doubts.map((doubt) => (
        <p key={doubt}>
          <b>doubt</b> {doubt}
        </p>
      ))}
      <Contributions out={out} />
      <FindingsList findings={data.findings.filter((f) => f.level === 'doubt')} />
      <h4>Sources</h4>
      <ul>
        {data.sources.map((s) => (
          <li key={s.title}>
            {s.title}
            {s.at ? `, ${s.at}` : ''} <small>({s.status})</small>
          </li>
        ))}
      </ul>
      <p>
        <Link
          from="/s/$study"
          to="/s/$study/questions/$question"
          params={(before) => ({ ...before, question })}
          search={(before) => ({ ...before, of: subject })}
          onClick={onLeave}
        >
          The whole answer: {data.title}
        </Link>
      </p>
    </section>
  );
}
