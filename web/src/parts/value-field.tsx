import {
  absentWhy,
  type Kind,
  kindDef,
  parseQuantity,
  standardUncertainty,
  unitSymbol,
} from '../../../src/quantity/index.ts';
import { propertyDef, wrongValue } from '../../../src/study/index.ts';
import type { CellStory } from '../worker/cell-story.ts';
import { oneValue } from '../worker/edit-cell.ts';
import { invalid } from './field-error.tsx';
import { numberLine } from './number-text.ts';

interface ValueFieldProps {
  readonly story: CellStory;
  readonly component: number;
  readonly text: string;
  readonly onChange: (text: string) => void;
}

/** A value as people write it, read back at once so that a slip is seen before it is kept. */
export function ValueField({ story, component, text, onChange }: ValueFieldProps) {
  const axis = story.holds === 'vector' ? ` ${'XYZ'[component]}` : '';
  const heard = story.holds === 'text' ? undefined : readBack(story, text);
  return (
    <label>
      New value{axis}
      <input
        value={text}
        required
        autoComplete="off"
        aria-describedby={`heard-${component}`}
        {...invalid(heard?.ok === false)}
        onChange={(e) => onChange(e.target.value)}
      />
      <small id={`heard-${component}`} className={heard?.ok === false ? 'open' : 'soft'}>
        {heard?.words ?? ''}
      </small>
    </label>
  );
}

/** What was typed, read back; not ok when it could not be recorded. */
export function readBack(story: CellStory, text: string): { ok: boolean; words: string } {
  const { cell } = story;
  const absent = story.holds === 'vector' ? undefined : absentWhy(text);
  if (absent) return { ok: true, words: `read as no value: ${absent}` };
  const def = propertyDef(story.of.property);
  const number = cell.c === 'number' || cell.c === 'vector' ? cell : undefined;
  const kind = number?.kind ?? def?.kind ?? 'ratio';
  const unit = number?.unit ?? def?.unit ?? kindDef(kind).show[0];
  if (text.trim() === '') return { ok: true, words: `for example ${exampleOf(kind, unit)}` };
  const read = parseQuantity(text, kind, { unit });
  if (!read.ok) return { ok: false, words: `not read: ${read.why}. ${read.next}` };
  const { x, spread } = read.value;
  const u = standardUncertainty(spread, x) ?? (kind === 'count' ? 0 : 'unknown');
  const words = `read as ${numberLine({ x, u, kind, unit })}`;
  const wrong =
    story.holds === 'vector' ? undefined : wrongValue(oneValue(read), story.of.property);
  return wrong
    ? { ok: false, words: `${words}: ${wrong.why}. ${wrong.next}` }
    : { ok: true, words };
}

const exampleOf = (kind: Kind, unit: string): string =>
  kind === 'count' ? '12' : `12.5 ± 0.2 ${unitSymbol(unit)}`;
