import { useClient } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import type { CellStory, ReadingStory } from '../worker/cell-story.ts';
import { cellLine, shareText } from './number-text.ts';
import { PhotosShown } from './photos-shown.tsx';
import { timeText } from './time-text.ts';
import { lineOf } from './ways.ts';

export interface ReadingCardProps {
  readonly story: CellStory;
  readonly reading: ReadingStory;
}

/** One reading with all that is known of it: who, when, with what, from which file. */
export function ReadingCard({ story, reading: r }: ReadingCardProps) {
  const { desk } = useClient();
  const { reading, withdrawn } = r;
  const live = story.readings.filter((other) => !other.withdrawn);
  const choose = () =>
    void desk.chooseReading(story.of.subject, story.of.property, reading.id, recorder());
  const value = cellLine({ ...r.value, how: reading.how });
  return (
    <article className={`reading ${withdrawn ? 'withdrawn' : ''}`}>
      <p className="why-value">
        {withdrawn ? (
          <s>{value}</s>
        ) : (
          <span className={`digits line-${lineOf(reading.how)}`}>{value}</span>
        )}
      </p>
      {withdrawn && (
        <p>
          <b>withdrawn</b> by {withdrawn.by}: {withdrawn.why}
        </p>
      )}
      {!withdrawn && (
        <p>
          {r.weight === 0
            ? 'stands beside the value in force'
            : r.weight === 1
              ? 'carries the value in force'
              : `carries ${shareText(r.weight)} of the value in force`}
        </p>
      )}
      <dl>
        <Line term="as written" text={reading.asWritten} />
        <Line term="known as" text={reading.how} />
        <Line term="instrument" text={r.instrument ?? 'none named'} />
        <Line term="by" text={reading.by} />
        <Line
          term="taken"
          text={`${reading.takenAt.local.replace('T', ' ')} ${reading.takenAt.zone ?? ''}`}
        />
        {reading.source && (
          <Line
            term="from"
            text={`${reading.source.file}, row ${reading.source.row}, column ${reading.source.column}`}
          />
        )}
        {r.otherCondition && <Line term="condition" text={r.otherCondition} />}
        {reading.note && <Line term="note" text={reading.note} />}
        {r.causes.length > 0 && <Line term="shares" text={r.causes.join('; ')} />}
        {r.gesture && (
          <Line
            term="came in by"
            text={`${r.gesture.words} (${r.gesture.by}, ${timeText(r.gesture.clock)}, ${r.gesture.device})`}
          />
        )}
      </dl>
      <PhotosShown photos={r.seenOn} />
      {!withdrawn && live.length > 1 && r.weight < 1 && (
        <button type="button" onClick={choose}>
          Choose this one
        </button>
      )}
    </article>
  );
}

const Line = ({ term, text }: { readonly term: string; readonly text: string }) => (
  <div>
    <dt>{term}</dt>
    <dd>{text}</dd>
  </div>
);
