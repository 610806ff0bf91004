import { useEffect, useState } from 'react';
import { SheetDialog } from '../parts/sheet-dialog.tsx';
import { ImportStep } from './import-step.tsx';
import { areCells, stepOfCells } from './pasted-cells.ts';
import type { FileStep } from './table-files.ts';

/** Cells in hand; the number tells one paste from the next. */
interface Pasted {
  readonly nth: number;
  readonly step?: FileStep;
}

/**
 * The way from a spreadsheet into the parts: by a paste anywhere on the page, or into a field for
 * devices whose browsers tell the page of none.
 */
export function PasteCells() {
  const [pasted, setPasted] = useState<Pasted>();
  const take = (text: string) =>
    setPasted((before) => ({ nth: (before?.nth ?? 0) + 1, step: stepOfCells(text) }));
  usePaste(take, pasted !== undefined);
  return (
    <>
      <button type="button" aria-haspopup="dialog" onClick={() => setPasted({ nth: 0 })}>
        Paste from a spreadsheet
      </button>
      {pasted && (
        <SheetDialog title="Cells from a spreadsheet" onClose={() => setPasted(undefined)}>
          {pasted.step ? (
            <ImportStep
              key={pasted.nth}
              step={pasted.step}
              looksAtOnce
              onChange={(step) => setPasted({ ...pasted, step })}
            />
          ) : (
            <CellsField onCells={take} />
          )}
        </SheetDialog>
      )}
    </>
  );
}

/** Hears of cells that are pasted outside every field; another dialog keeps its pastes. */
function usePaste(take: (text: string) => void, isOpen: boolean): void {
  useEffect(() => {
    const onPaste = (event: ClipboardEvent) => {
      const text = event.clipboardData?.getData('text/plain') ?? '';
      const isElsewhere = !isOpen && document.querySelector('dialog[open]') !== null;
      if (isElsewhere || isField(event.target) || !areCells(text)) return;
      event.preventDefault();
      take(text);
    };
    document.addEventListener('paste', onPaste);
    return () => document.removeEventListener('paste', onPaste);
  });
}

const isField = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('input, textarea, select') !== null;

function CellsField({ onCells }: { readonly onCells: (text: string) => void }) {
  const [text, setText] = useState('');
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onCells(text);
      }}
    >
      <p>
        Copy the cells with their row of headings, and paste them here or anywhere on the sheet of
        parts. Rows with a number and, say, a mass become parts. Rows with a number, a property and
        a value become readings of parts that are here. Nothing is written before you have seen what
        they are taken for.
      </p>
      <label>
        Cells, headings first
        <textarea
          className="cells-field"
          rows={8}
          required
          wrap="off"
          spellCheck={false}
          value={text}
          onChange={(e) => setText(e.target.value)}
        />
      </label>
      <button type="submit" className="primary">
        Look at the cells
      </button>
    </form>
  );
}
