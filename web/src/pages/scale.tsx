import { useState } from 'react';
import type { WrittenInputs } from '../../../src/engine/index.ts';
import { PageSection } from '../answer-page/answer-page.tsx';
import { Asked } from '../answer-page/asked.tsx';
import { AskedOfValues } from '../answer-page/asked-of-values.tsx';
import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import { useHeader } from '../app/study-header.ts';
import { counted } from '../parts/counted.ts';
import { NodePicker } from '../parts/node-picker.tsx';
import { ScaleEntry } from '../scale/scale-entry.tsx';

/** At the scale: one part after the other, each with what was to be expected beside it. */
export function ScalePage() {
  const { root } = useHeader();
  const { selected, select } = useSelection();
  const { data: waiting } = useDesk(['waiting'], (d) => d.waitingForMass());
  const next = waiting?.find((w) => w.id !== selected);
  return (
    <div className="scale-page">
      <h1 className="heard">At the scale</h1>
      <div className="scale-top">
        <NodePicker
          title="On the scale"
          kind="part"
          value={selected ?? ''}
          onChange={(id) => select(id === '' ? undefined : id)}
          empty="choose a part"
        />
        {waiting && (
          <div className="scale-waiting">
            <span className={waiting.length > 0 ? 'open' : 'soft'}>
              {counted(waiting.length, 'part')} without a mass
            </span>
            {next && (
              <button type="button" onClick={() => select(next.id)}>
                Next: {next.label} {next.name}
              </button>
            )}
          </div>
        )}
      </div>
      <ScaleEntry
        key={selected ?? ''}
        part={selected ?? ''}
        onKept={() => next && select(next.id)}
      />
      <div className="answer-page-sections scale-more">
        <FastenersByWeight />
        {root !== undefined && (
          <Asked question="fluid-balance" of={root} shows={['results', 'table', 'findings']} />
        )}
      </div>
    </div>
  );
}

/** A bag on the scale: how many pieces, and whether the weight tells one number from the next. */
function FastenersByWeight() {
  const [written, setWritten] = useState<WrittenInputs>({});
  return (
    <PageSection title="Fasteners by weight">
      <AskedOfValues
        question="fastener-count"
        written={written}
        onChange={setWritten}
        shows={['results', 'table', 'findings']}
      />
    </PageSection>
  );
}
