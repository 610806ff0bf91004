import type { NodeKind } from '../../../src/study/index.ts';
import { useDesk } from '../app/desk-client.ts';
import { nodeWords } from '../worker/node-words.ts';

export interface NodePickerProps {
  readonly title: string;
  /** Id of the node; empty for none. */
  readonly value: string;
  readonly onChange: (id: string) => void;
  readonly kind?: NodeKind;
  /** Kind that is not offered, because none means it. */
  readonly without?: NodeKind;
  /** What none means. */
  readonly empty: string;
}

/** Chooses a node of the study by its number and name. */
export function NodePicker({ title, value, onChange, kind, without, empty }: NodePickerProps) {
  const nodes = useDesk(['nodes', kind ?? 'all'], (desk) => desk.nodes(kind));
  return (
    <label className="field">
      {title}
      <select value={value} onChange={(e) => onChange(e.target.value)}>
        <option value="">{empty}</option>
        {nodes.data
          ?.filter((n) => n.kind !== without)
          .map((n) => (
            <option key={n.id} value={n.id}>
              {nodeWords(n)}
            </option>
          ))}
      </select>
    </label>
  );
}
