import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { queries, useClient } from '../app/desk-client.ts';
import { SettingsButton } from '../app/settings.tsx';
import { usePageTitle } from '../app/use-page-title.ts';
import { counted } from '../parts/counted.ts';
import { Refusals } from '../parts/refusals.tsx';
import { timeText } from '../parts/time-text.ts';
import type { ListedStudy } from '../worker/study-list.ts';
import { ForgetStudy } from './forget-study.tsx';
import { NewStudyForm } from './new-study-form.tsx';

/** The studies of this library, and what this device has of them. */
export function StudiesPage() {
  usePageTitle('Studies');
  const { desk } = useClient();
  const { data, error } = useQuery({
    queryKey: ['studies'],
    queryFn: () => desk.studies(),
    staleTime: 0,
  });
  const refresh = () => void queries.invalidateQueries({ queryKey: ['studies'] });
  return (
    <div className="sheet">
      <header className="strip">
        <b className="brand">Hoistside</b>
        <nav aria-label="Sheets">
          <span className="on">Studies</span>
        </nav>
        <div className="strip-right">
          <SettingsButton />
        </div>
      </header>
      <main className="sheet-main">
        <div className="page">
          <h1>Studies</h1>
          <Refusals error={error} />
          {data?.unreachable !== undefined && (
            <p role="status" className="open">
              These are the studies that this device has a copy of: {data.unreachable}
            </p>
          )}
          {data?.studies.length === 0 && <p>There is no study in this library yet.</p>}
          <ul className="study-list">
            {data?.studies.map((study) => (
              <StudyLine key={study.study} study={study} onForgotten={refresh} />
            ))}
          </ul>
          <NewStudyForm onMade={refresh} />
        </div>
      </main>
    </div>
  );
}

interface StudyLineProps {
  readonly study: ListedStudy;
  readonly onForgotten: () => void;
}

const StudyLine = ({ study: s, onForgotten }: StudyLineProps) => (
  <li>
    <Link to="/s/$study" params={{ study: s.study }}>
      <b>{s.title}</b>
      {s.invented && <em>invented</em>}
      <span className="soft">
        {s.vehicle === s.title ? '' : `${s.vehicle} · `}
        {counted(s.parts, 'part')} · {counted(s.changes, 'change')} · latest {timeText(s.clock)}
        {s.waiting > 0 && ` · ${s.waiting} to be sent`}
      </span>
    </Link>
    {s.isCopied && <ForgetStudy study={s} onForgotten={onForgotten} />}
  </li>
);
