import { useLocation } from '@tanstack/react-router';
import { revisionNumber } from '../parts/revision-text.ts';
import { SHEETS, sheetNumber } from './sheets.ts';
import { useHeader } from './study-header.ts';
import { usePageTitle } from './use-page-title.ts';

/** The title block at the foot of each sheet and print, with fields after ISO 7200. */
export function TitleBlock() {
  const h = useHeader();
  const { pathname } = useLocation();
  const sheet = sheetNumber(pathname);
  usePageTitle(SHEETS[sheet - 1]?.title ?? (pathname.endsWith('/import') ? 'Import' : ''), h.title);
  const fields = [
    { name: 'Study', text: h.invented ? `${h.title}, invented` : h.title },
    { name: 'Condition', text: h.condition },
    { name: 'Rates', text: h.rates === '' ? 'none' : h.rates },
    { name: 'Revision', text: revisionNumber(h.revision) },
    { name: 'Date', text: h.date === '' ? 'no change yet' : h.date },
    { name: 'Units', text: 'mm · kg · N' },
    { name: 'Sheet', text: sheet === 0 ? '–' : `${sheet} / ${SHEETS.length}` },
  ];
  return (
    <footer className="title-block">
      <dl>
        {fields.map(({ name, text }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </footer>
  );
}
