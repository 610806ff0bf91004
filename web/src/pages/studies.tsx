import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { queries, useClient } from '../app/desk-client.ts';
import { SettingsButton } from '../app/settings.tsx';
import { usePageTitle } from '../app/use-page-title.ts';
import { counted } from '../parts/counted.ts';
import { Refusals } from '../parts/refusals.tsx';
import { timeText } from '../parts/time-text.ts';
import { NewStudyForm } from './new-study-form.tsx';

/** The studies of this library. */
export function StudiesPage() {
  usePageTitle('Studies');
  const { api } = useClient();
  const { data, error } = useQuery({ queryKey: ['studies'], queryFn: () => api.studies() });
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
          {data?.studies.length === 0 && <p>There is no study in this library yet.</p>}
          <ul className="study-list">
            {data?.studies.map((s) => (
              <li key={s.study}>
                <Link to="/s/$study" params={{ study: s.study }}>
                  <b>{s.title}</b>
                  {s.invented && <em>invented</em>}
                  <span className="soft">
                    {s.vehicle === s.title ? '' : `${s.vehicle} · `}
                    {counted(s.parts, 'part')} · {counted(s.changes, 'change')} · latest{' '}
                    {timeText(s.clock)}
                  </span>
                </Link>
              </li>
            ))}
          </ul>
          <NewStudyForm onMade={() => void queries.invalidateQueries({ queryKey: ['studies'] })} />
        </div>
      </main>
    </div>
  );
}
