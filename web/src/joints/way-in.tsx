import { useMemo, useState } from 'react';
import { PageSection } from '../answer-page/answer-page.tsx';
import { PieceShown } from '../answer-page/piece-shown.tsx';
import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import { Refusals } from '../parts/refusals.tsx';
import type { AnswerSheet } from '../worker/answer-sheet.ts';
import { nodeWords } from '../worker/node-words.ts';
import { WayStepper } from './way-stepper.tsx';

const QUESTION = 'removal-path';

/** The quickest way to a part, stepped on the map, and what to do where something is locked. */
export function WayIn() {
  const { selected } = useSelection();
  const map = useDesk(['map'], (d) => d.map());
  const heaviest = useMemo(
    () => map.data?.bodies.filter((b) => b.kind === 'assembly').sort(heavier)[0]?.id,
    [map.data],
  );
  const [chosen, setChosen] = useState<string>();
  const [locked, setLocked] = useState('');
  const target = chosen ?? heaviest ?? selected ?? '';
  const over: Record<string, string> = locked.trim() === '' ? {} : { locked: locked.trim() };
  const { data: sheet, error } = useDesk(
    ['answer', QUESTION, target, over],
    (d) => d.answer(QUESTION, target, over),
    target !== '',
  );
  return (
    <PageSection title="Way in and out" wide>
      <div className="register-tools">
        <TargetPicker value={target} onChange={setChosen} />
        <label>
          Locked, by number
          <input
            value={locked}
            placeholder="J103 J604"
            autoComplete="off"
            onChange={(e) => setLocked(e.target.value)}
          />
        </label>
      </div>
      <Refusals error={error} />
      {sheet && <Way key={sheet.key} sheet={sheet} />}
    </PageSection>
  );
}

const heavier = (a: { readonly mass?: number }, b: { readonly mass?: number }): number =>
  (b.mass ?? 0) - (a.mass ?? 0);

function Way({ sheet }: { readonly sheet: AnswerSheet }) {
  return (
    <>
      <PieceShown piece="cautions" sheet={sheet} />
      <div className="way-head">
        <PieceShown
          piece="results"
          sheet={sheet}
          results={['time', 'cost', 'refit', 'steps', 'tools', 'changes', 'renewed']}
        />
        <PieceShown piece="findings" sheet={sheet} />
      </div>
      <WayStepper sheet={sheet} />
      <PieceShown piece="figures" sheet={sheet} figures={['What must be done before what']} />
    </>
  );
}

interface TargetPickerProps {
  readonly value: string;
  readonly onChange: (id: string) => void;
}

/** What is to come off: an assembly or a part. */
function TargetPicker({ value, onChange }: TargetPickerProps) {
  const assemblies = useDesk(['nodes', 'assembly'], (d) => d.nodes('assembly'));
  const parts = useDesk(['nodes', 'part'], (d) => d.nodes('part'));
  return (
    <label>
      Take off
      <select value={value} onChange={(e) => onChange(e.target.value)}>
        <option value="">choose what is to come off</option>
        {[assemblies, parts].map(({ data }, i) => (
          <optgroup key={i === 0 ? 'assemblies' : 'parts'} label={i === 0 ? 'Assemblies' : 'Parts'}>
            {data?.map((node) => (
              <option key={node.id} value={node.id}>
                {nodeWords(node)}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}
