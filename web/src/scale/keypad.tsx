import { MASS_UNITS, type MassUnit } from '../worker/weighing.ts';

const KEYS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0', '±'] as const;

export interface KeypadProps {
  readonly text: string;
  readonly onText: (text: string) => void;
  /** What the keys are for. */
  readonly label: string;
  /** Where the unit can be changed. */
  readonly unit?: MassUnit;
  readonly onUnit?: (unit: MassUnit) => void;
}

/** Keys of 16 mm and more for a number: gloves type no small letters. The keyboard types the same. */
export const Keypad = ({ text, label, unit, onText, onUnit }: KeypadProps) => (
  <fieldset className="keypad" aria-label={label}>
    {KEYS.map((key) => (
      <button
        key={key}
        type="button"
        aria-label={NAMES[key]}
        onClick={() => onText(key === '±' ? `${text.trim()} ± ` : `${text}${key}`)}
      >
        {key}
      </button>
    ))}
    {unit !== undefined && onUnit && (
      <button
        type="button"
        aria-label={`unit ${unit}: change it`}
        onClick={() => onUnit(nextUnit(unit))}
      >
        {unit}
      </button>
    )}
    <button type="button" className="back" onClick={() => onText(text.trimEnd().slice(0, -1))}>
      Back
    </button>
    <button type="button" onClick={() => onText('')}>
      Clear
    </button>
  </fieldset>
);

const NAMES: Readonly<Record<string, string>> = { '.': 'decimal point', '±': 'plus or minus' };

const nextUnit = (unit: MassUnit): MassUnit =>
  MASS_UNITS[(MASS_UNITS.indexOf(unit) + 1) % MASS_UNITS.length] ?? 'kg';
