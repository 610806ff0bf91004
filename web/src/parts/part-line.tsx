import { memo } from 'react';
import { propertyWords } from '../../../src/study/index.ts';
import { PART_PROPERTIES, type PartProperty, type PartRow } from '../worker/part-rows.ts';
import { CellShown } from './cell-shown.tsx';

export interface PartLineProps {
  readonly row: PartRow;
  /** 1-based place in the table, headings included. */
  readonly index: number;
  readonly top: number;
  readonly height: number;
  readonly inHand: boolean;
  readonly onSelect: (id: string) => void;
}

/** One part in the table; a touch on its number takes it in hand. */
export const PartLine = memo(function PartLine({
  row,
  index,
  top,
  height,
  inHand,
  onSelect,
}: PartLineProps) {
  const { mass } = row.cells;
  return (
    <tr
      aria-rowindex={index}
      className={`parts-row ${inHand ? 'in-hand-row' : ''}`}
      style={{ transform: `translateY(${top}px)`, blockSize: height }}
      onClick={() => onSelect(row.id)}
    >
      <td>
        <button type="button" aria-pressed={inHand} onClick={() => onSelect(row.id)}>
          {row.label}
        </button>
      </td>
      <td>{row.name}</td>
      <PartCell row={row} property="mass" />
      <td>{mass.c === 'missing' ? <span className="open">missing</span> : mass.how}</td>
      {BEHIND_MASS.map((property) => (
        <PartCell key={property} row={row} property={property} />
      ))}
      <td>{row.assembly}</td>
    </tr>
  );
});

const BEHIND_MASS = PART_PROPERTIES.filter((property) => property !== 'mass');

const PartCell = ({
  row,
  property,
}: {
  readonly row: PartRow;
  readonly property: PartProperty;
}) => (
  <td>
    <CellShown
      cell={row.cells[property]}
      subject={row.id}
      property={property}
      of={`${propertyWords(property)} of ${row.label}`}
    />
  </td>
);
