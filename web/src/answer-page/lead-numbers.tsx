import { DecisionShown } from '../answer/decision-shown.tsx';
import { OutNumber } from '../parts/out-number.tsx';
import { outOf, useAnswers } from '../parts/use-out.ts';

/** One number at the head of a page: an output of a question, by a short title. */
export interface Lead {
  readonly title: string;
  readonly question: string;
  readonly output: string;
  /** What stands there while the question can not be answered. */
  readonly without: string;
}

/** The numbers that a page turns on, each with its spread, its word and its origin a touch away. */
export const LeadNumbers = ({ lead }: { readonly lead: readonly Lead[] }) => (
  <div className="tiles lead">
    {lead.map((one) => (
      <LeadTile key={`${one.question} ${one.output}`} {...one} />
    ))}
  </div>
);

function LeadTile({ title, question, output, without }: Lead) {
  const { data } = useAnswers(question);
  const found = outOf(data?.[0], output);
  return (
    <section className="tile">
      <h2>{title}</h2>
      {found ? (
        <OutNumber found={found} size="large" />
      ) : (
        data && (
          <p className="open">
            <b>open</b> <small>{without}</small>
          </p>
        )
      )}
      {found?.out.decision && (
        <DecisionShown
          decision={found.out.decision}
          kind={found.out.kind}
          unit={found.out.unit}
          says={found.out.decision.direction}
        />
      )}
    </section>
  );
}
