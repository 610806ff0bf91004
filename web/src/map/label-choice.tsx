import type { MapModel } from '../worker/map-model.ts';
import { HEAVIEST, heaviest } from './heaviest.ts';

export const LABEL_CHOICES = ['none', 'heaviest', 'same assembly'] as const;
export type LabelChoice = (typeof LABEL_CHOICES)[number];

/** Which bodies carry a label. */
export function labelledBodies(
  { bodies }: MapModel,
  choice: LabelChoice,
  selected: string | undefined,
): ReadonlySet<string> {
  if (choice === 'none') return new Set();
  const parts = bodies.filter((b) => b.kind === 'part');
  const inHand = bodies.find((b) => b.id === selected);
  const chosen =
    choice === 'heaviest' ? parts : parts.filter((p) => inHand && p.parent === inHand.parent);
  return new Set(heaviest(chosen, HEAVIEST).map((b) => b.id));
}

export interface LabelPickerProps {
  readonly value: LabelChoice;
  readonly onChange: (choice: LabelChoice) => void;
}

export const LabelPicker = ({ value, onChange }: LabelPickerProps) => (
  <label className="inline">
    Labels
    <select value={value} onChange={(e) => onChange(e.target.value as LabelChoice)}>
      {LABEL_CHOICES.map((choice) => (
        <option key={choice}>{choice}</option>
      ))}
    </select>
  </label>
);
