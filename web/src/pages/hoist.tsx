import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { LAPSES } from '../../../src/study/index.ts';
import { useClient, useDesk } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { useSelection } from '../app/selection.tsx';
import { useHeader } from '../app/study-header.ts';
import { FigureShown } from '../figure/figure-shown.tsx';
import { StepSheetShown } from '../hoist/step-sheet.tsx';
import { FindingsList } from '../parts/findings-list.tsx';
import type { DayEnd, HoistModel } from '../worker/hoist-model.ts';

/** At the hoist: what to do next, what must be on record before it, and what is left after it. */
export function HoistPage() {
  const { data, isPending } = useDesk(['hoist'], (d) => d.hoist());
  const [chosen, setChosen] = useState<string>();
  if (isPending) return <p role="status">Working out the balance after each step.</p>;
  if (!data) return <NoPlan />;
  const at = data.steps.findIndex((s) => s.id === (chosen ?? data.next));
  const step = data.steps[at < 0 ? data.steps.length - 1 : at];
  const place = step ? data.steps.indexOf(step) : 0;
  const go = (by: number) => setChosen(data.steps[place + by]?.id);
  return (
    <div className="hoist-page">
      <div className="hoist-head">
        <button type="button" disabled={place === 0} onClick={() => go(-1)}>
          Before
        </button>
        <h1>
          Step {place + 1} of {data.steps.length} · {step?.name}
        </h1>
        <span className={step?.standing === 'done' ? 'standing' : 'standing open'}>
          {step?.standing}
        </span>
        <button type="button" disabled={place === data.steps.length - 1} onClick={() => go(1)}>
          After
        </button>
        {chosen !== undefined && chosen !== data.next && data.next !== undefined && (
          <button type="button" onClick={() => setChosen(undefined)}>
            To what is next
          </button>
        )}
      </div>
      <InHandLine />
      {step && <StepSheetShown key={step.id} step={step} names={data.names} />}
      <Lapses />
      <Order model={data} />
      <EndOfDay list={data.dayEnd} />
      <p className="soft hoist-defer">
        The instructions of the vehicle’s and the lift’s makers, local rules and licensed practice
        come first. This sheet records and reminds, no more.
      </p>
    </div>
  );
}

const NoPlan = () => (
  <div className="hoist-page">
    <h1>On the hoist</h1>
    <p className="open">The study has no removal plan.</p>
    <p>Import its steps as removals.csv and the pads of the hoist as hoist.csv.</p>
  </div>
);

/** The part in hand stays selected from sheet to sheet. */
function InHandLine() {
  const { selected } = useSelection();
  const { study } = useHeader();
  const { data } = useDesk(
    ['node', selected],
    (d) => d.node(selected ?? ''),
    selected !== undefined,
  );
  if (!data || selected === undefined) return null;
  return (
    <p className="hoist-hand">
      In hand:{' '}
      <b>
        {data.label} {data.name}
      </b>{' '}
      <Link to="/s/$study/scale" params={{ study }} search={{ part: selected }}>
        to the scale
      </Link>
    </p>
  );
}

/** Records of high voltage and of an open pack are not good any more after these. */
function Lapses() {
  const { desk } = useClient();
  return (
    <section className="hoist-lapses" aria-label="What makes records lapse">
      {LAPSES.map((why) => (
        <button
          key={why}
          type="button"
          onClick={() => void desk.atHoist({ do: 'lapse', why }, recorder())}
        >
          {why}: records lapse
        </button>
      ))}
    </section>
  );
}

function Order({ model: { figures, findings, proposals } }: { readonly model: HoistModel }) {
  return (
    <section aria-label="The whole plan">
      <h2>The whole plan</h2>
      <FindingsList findings={findings} />
      {proposals.map(({ title, steps }) => (
        <div key={title}>
          <h3>{title}</h3>
          <ol>
            {steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </div>
      ))}
      <div className="hoist-figures">
        {figures.map((figure) => (
          <FigureShown key={figure.title} figure={figure} />
        ))}
      </div>
    </section>
  );
}

/** Labels in sight of each line. */
const IN_SIGHT = 6;

const EndOfDay = ({ list }: { readonly list: readonly DayEnd[] }) => (
  <section aria-label="End of the day">
    <h2>End of the day</h2>
    <ul className="hoist-rows">
      {list.map(({ words, labels }) => (
        <li key={words}>
          <span>
            {words}
            {labels.length > 0 && `: ${labels.slice(0, IN_SIGHT).join(', ')}`}
            {labels.length > IN_SIGHT && ` and ${labels.length - IN_SIGHT} more`}
          </span>
          <em className={labels.length > 0 ? 'open' : ''}>{labels.length}</em>
        </li>
      ))}
    </ul>
  </section>
);
