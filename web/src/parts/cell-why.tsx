import { useState } from 'react';
import { useDesk } from '../app/desk-client.ts';
import { EditCell } from './edit-cell.tsx';
import { FindingsList } from './findings-list.tsx';
import { cellLine } from './number-text.ts';
import { PhotosShown } from './photos-shown.tsx';
import { ReadingCard } from './reading-card.tsx';
import { Refusals } from './refusals.tsx';
import { lineOf } from './ways.ts';

export interface CellOf {
  readonly subject: string;
  readonly property: string;
}

const RULES = {
  'only reading': 'It is the only reading.',
  chosen: 'It was chosen by hand among the readings.',
  'best way of knowing': 'It is the latest of the readings that are known best.',
  'weighted mean':
    'Readings of the best way of knowing agree and are combined, each weighted by one over its variance.',
} as const;

const ruleWords = (rule: keyof typeof RULES, readings: number): string =>
  rule === 'only reading' && readings > 1
    ? 'It is the only reading that stands; what was withdrawn is below.'
    : RULES[rule];

/** The value in force of a cell, the rule behind it, and every reading, withdrawn ones too. */
export function CellWhy({ subject, property }: CellOf) {
  const story = useDesk(['story', subject, property], (desk) => desk.story(subject, property));
  const [editing, setEditing] = useState(false);
  const { data } = story;
  if (!data) return <Refusals error={story.error} />;
  const { cell, rule } = data;
  return (
    <section className="why">
      <h3>
        {data.subject}: {data.property}
      </h3>
      <p className="soft">Condition: {data.condition}</p>
      {cell.c === 'missing' ? (
        <p className="open why-value">missing: {cell.why}</p>
      ) : (
        <>
          <p className="why-value">
            <span className={`digits line-${lineOf(cell.how)}`}>{cellLine(cell)}</span>
          </p>
          <p>
            Known as <b>{cell.how}</b>. {rule && ruleWords(rule, data.readings.length)}
          </p>
        </>
      )}
      <FindingsList findings={data.findings} />
      {editing ? (
        <EditCell story={data} onDone={() => setEditing(false)} />
      ) : (
        <button type="button" className="primary" onClick={() => setEditing(true)}>
          {cell.c === 'missing' ? 'Record a reading' : 'Correct, or measure again'}
        </button>
      )}
      <h4>
        {data.readings.length === 1
          ? 'The reading'
          : `All ${data.readings.length} readings, newest first`}
      </h4>
      <div className="readings">
        {data.readings.map((reading) => (
          <ReadingCard key={reading.reading.id} story={data} reading={reading} />
        ))}
      </div>
      {data.photos.length > 0 && <h4>Photographs of {data.subject}</h4>}
      <PhotosShown photos={data.photos} />
    </section>
  );
}
