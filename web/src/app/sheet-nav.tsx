import { Link, useLocation } from '@tanstack/react-router';
import { useState } from 'react';
import { SheetDialog } from '../parts/sheet-dialog.tsx';
import { SHEETS, sheetNumber } from './sheets.ts';
import { useHeader } from './study-header.ts';

/** The sheets of the study: tabs where there is room, else a button that opens their list. */
export function SheetNav() {
  const { pathname } = useLocation();
  const [listed, setListed] = useState(false);
  const on = SHEETS[sheetNumber(pathname) - 1]?.title ?? 'other';
  return (
    <>
      <nav className="sheet-tabs" aria-label="Sheets of this study">
        <SheetLinks />
      </nav>
      <div className="sheet-list-button">
        <button type="button" aria-haspopup="dialog" onClick={() => setListed(true)}>
          Sheets: {on} <span aria-hidden="true">▾</span>
        </button>
      </div>
      {listed && (
        <SheetDialog title="Sheets of this study" onClose={() => setListed(false)}>
          <nav className="sheet-list" aria-label="All sheets of this study">
            <SheetLinks onGone={() => setListed(false)} />
          </nav>
        </SheetDialog>
      )}
    </>
  );
}

function SheetLinks({ onGone }: { readonly onGone?: () => void }) {
  const { study } = useHeader();
  return SHEETS.map(({ to, title, exact }) => (
    <Link
      key={to}
      to={to}
      params={{ study }}
      activeOptions={{ exact, includeSearch: false }}
      activeProps={{ className: 'on', 'aria-current': 'page' }}
      onClick={onGone}
    >
      {title}
    </Link>
  ));
}
