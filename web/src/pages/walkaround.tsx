import { useEffect, useRef, useState } from 'react';
import { useClient, useDesk } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { useSelection } from '../app/selection.tsx';
import { Refusals } from '../parts/refusals.tsx';
import type { Walkaround } from '../worker/walk-rows.ts';
import { WalkAdd } from './walk-add.tsx';
import { WalkLine } from './walk-line.tsx';

/** What was said at the vehicle, by its time line: words, photographs, drafts, answers side by side. */
export function WalkaroundPage() {
  const walks = useDesk(['walkarounds'], (desk) => desk.walkarounds());
  const film = useRef<HTMLVideoElement>(null);
  const [shown, setShown] = useState<string>();
  const all = walks.data ?? [];
  const walk = all.find((w) => w.id === shown) ?? all.at(-1);
  return (
    <div className="page walk-page">
      <h1>Walkaround</h1>
      <Refusals error={walks.error} />
      {all.length > 1 && (
        <label className="field">
          Recording
          <select value={walk?.id} onChange={(e) => setShown(e.target.value)}>
            {all.map((w) => (
              <option key={w.id} value={w.id}>
                {w.startedAt.replace('T', ' ')} {w.file}
              </option>
            ))}
          </select>
        </label>
      )}
      {walk && <Head walk={walk} film={film} />}
      {walk && (
        <ol className="walk" aria-label="Time line">
          {walk.rows.map((row) => (
            <WalkLine
              key={row.fromS}
              row={row}
              onPlay={() => {
                if (film.current) film.current.currentTime = row.fromS;
                void film.current?.play().catch(() => undefined);
              }}
            />
          ))}
        </ol>
      )}
      {walks.data && <WalkAdd first={all.length === 0} />}
    </div>
  );
}

type FilmRef = React.RefObject<HTMLVideoElement | null>;

/** How many drafts wait, the film where one is at hand, and the mark for a hand without a pen. */
function Head({ walk, film }: { readonly walk: Walkaround; readonly film: FilmRef }) {
  const [source, setSource] = useState<string>();
  useEffect(() => () => void (source && URL.revokeObjectURL(source)), [source]);
  return (
    <div className="walk-head">
      <p>
        {walk.file}, started {walk.startedAt.replace('T', ' ')}, kept by {walk.by}:{' '}
        <b className={walk.open > 0 ? 'open' : ''}>
          {walk.open === 0
            ? 'all drafts settled'
            : `${walk.open} drafts wait; none is in the study until accepted`}
        </b>
        <br />
        <span className="soft">
          Keys on a draft: A accept, E correct, S split, R reject, arrows to the next. M marks the
          moment.
        </span>
      </p>
      <MarkButton walk={walk} film={film} />
      {source ? (
        // biome-ignore lint/a11y/useMediaCaption: the words stand beside it on the time line
        <video
          ref={film}
          src={source}
          controls
          aria-label={walk.film ?? 'Film of this walkaround'}
        />
      ) : (
        <label className="field">
          Film or sound of it, played from this device{walk.film ? ` (${walk.film})` : ''}
          <input
            type="file"
            accept="video/*,audio/*"
            onChange={(e) => {
              const file = e.target.files?.[0];
              if (file) setSource(URL.createObjectURL(file));
            }}
          />
        </label>
      )}
    </div>
  );
}

/** One touch, or the key of a pedal or remote: the moment is kept with the part in hand. */
function MarkButton({ walk, film }: { readonly walk: Walkaround; readonly film: FilmRef }) {
  const { desk } = useClient();
  const { selected } = useSelection();
  const [told, setTold] = useState('');
  const [error, setError] = useState<unknown>();
  const mark = (how: 'key' | 'touch') => {
    const now = new Date();
    const local = new Date(now.getTime() - 60_000 * now.getTimezoneOffset())
      .toISOString()
      .slice(0, 19);
    const at = film.current ? { speech: walk.id, atS: film.current.currentTime } : {};
    desk
      .spoken({ do: 'mark', mark: { how, about: selected ?? null, local, ...at } }, recorder())
      .then(() => setTold(`marked at ${local.slice(11)}`), setError);
  };
  const latest = useRef(mark);
  latest.current = mark;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isTyping =
        event.target instanceof Element && event.target.closest('input, select, textarea');
      if (event.key.toLowerCase() === 'm' && !isTyping && !event.ctrlKey && !event.metaKey)
        latest.current('key');
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
  return (
    <p>
      <button type="button" onClick={() => mark('touch')}>
        Mark this moment
      </button>{' '}
      <span role="status">{told}</span>
      <Refusals error={error} />
    </p>
  );
}
