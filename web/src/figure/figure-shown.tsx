import { useId, useMemo, useRef } from 'react';
import {
  altText,
  type FigureTable,
  figureTable,
  type Layout,
  layOut,
  nominalText,
} from '../../../src/drawing/index.ts';
import type { Figure } from '../../../src/engine/index.ts';
import { useSize } from '../map/use-size.ts';
import { numberText, type Shown } from '../parts/number-text.ts';
import { Hatches } from './hatches.tsx';
import { InkShown } from './ink-shown.tsx';

/** A figure of an answer at the width that is there, with its numbers in a table a touch away. */
export function FigureShown({ figure }: { readonly figure: Figure }) {
  const paper = useRef<HTMLDivElement>(null);
  const width = Math.round(useSize(paper).width);
  const id = useId().replaceAll(/[^\w-]/g, '');
  const picture = useMemo(
    () => (width > 0 ? layOut(figure, { width, say: sayNumber }) : undefined),
    [figure, width],
  );
  const table = useMemo(() => figureTable(figure, sayNumber), [figure]);
  return (
    <figure className="figure">
      <figcaption>{figure.title}</figcaption>
      <div ref={paper} role="img" aria-label={altText(figure, sayNumber)}>
        {picture && (
          <svg
            width={picture.width}
            height={picture.height}
            viewBox={`0 0 ${picture.width} ${picture.height}`}
            aria-hidden="true"
          >
            <Hatches id={id} />
            {picture.inks.map((ink, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: inks have no other name
              <InkShown key={i} ink={ink} hatches={id} />
            ))}
          </svg>
        )}
      </div>
      {table.rows.length > 0 && (
        <details>
          <summary>Numbers of the figure</summary>
          <NumbersTable title={figure.title} table={table} />
        </details>
      )}
    </figure>
  );
}

const NumbersTable = ({
  title,
  table,
}: {
  readonly title: string;
  readonly table: FigureTable;
}) => (
  <div className="table-scroll">
    <table>
      <caption className="heard">{title}</caption>
      <thead>
        <tr>
          {table.columns.map((column, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: columns may have no name
            <th scope="col" key={i} className={column.numbers ? 'num' : ''}>
              {column.head === '' ? <span className="heard">what</span> : column.head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.map((row, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows may say the same
          <tr key={i}>
            {row.map((cell, n) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: cells of a row may say the same
              <td key={n} className={table.columns[n]?.numbers ? 'num' : ''}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

/** A number of a figure in the words and the rounding of the pages. */
export const sayNumber: Layout['say'] = (number, beside = []) => {
  if (number.u === undefined) return { text: nominalText(number, beside), lack: '' };
  const { value, spread, unit, lack } = numberText(shown(number), beside.map(shown));
  const both = spread === '' || lack !== '' ? value : `${value} ± ${spread}`;
  const closed = unit === '%' && both !== value ? `(${both})` : both;
  return { text: unit === '' ? closed : `${closed} ${unit}`, lack };
};

const shown = ({ u, ...number }: Parameters<Layout['say']>[0]): Shown => ({
  ...number,
  u: u ?? 'unknown',
});
