import { useMemo, useState } from 'react';
import { propertyWords } from '../../../src/study/index.ts';
import { PageSection } from '../answer-page/answer-page.tsx';
import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import { CellShown } from '../parts/cell-shown.tsx';
import { counted } from '../parts/counted.ts';
import {
  type EndShown,
  JOINT_COLUMNS,
  type JointColumn,
  type JointRow,
} from '../worker/joint-rows.ts';

const SHOW = ['all joints', 'bag and holes differ', 'an end not known'] as const;
type Show = (typeof SHOW)[number];

/** Rows in sight before more are asked for. */
const PAGE = 15;

/** What is looked for of every joint; the rest is there where it was taken. */
const ALWAYS: ReadonlySet<JointColumn> = new Set(['type', 'spec', 'count.holes', 'tool']);

/** Every group of joints: both sides, bags against holes, and what is recorded; each value a touch from its origin. */
export function JointRegister() {
  const { data: rows } = useDesk(['joints'], (desk) => desk.joints());
  const [text, setText] = useState('');
  const [show, setShow] = useState<Show>('all joints');
  const [inSight, setInSight] = useState(PAGE);
  const found = useMemo(() => filtered(rows ?? [], text, show), [rows, text, show]);
  const columns = useMemo(
    () =>
      JOINT_COLUMNS.filter(
        (c) => ALWAYS.has(c) || rows?.some(({ cells }) => cells[c].c !== 'missing'),
      ),
    [rows],
  );
  if (!rows) return null;
  return (
    <PageSection title="Joints, both sides" wide>
      <div className="register-tools">
        <label>
          Find
          <input type="search" value={text} onChange={(e) => setText(e.target.value)} />
        </label>
        <label>
          Show
          <select value={show} onChange={(e) => setShow(e.target.value as Show)}>
            {SHOW.map((choice) => (
              <option key={choice}>{choice}</option>
            ))}
          </select>
        </label>
        <span role="status">
          {counted(found.length, 'group')} of {rows.length}
        </span>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard */}
      <section className="table-scroll" tabIndex={0} aria-label="Joints, both sides">
        <table className="register">
          <thead>
            <tr>
              <th scope="col">joint</th>
              <th scope="col">holds</th>
              <th scope="col">onto</th>
              <th scope="col">in bags</th>
              {columns.map((column) => (
                <th scope="col" key={column}>
                  {propertyWords(column)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {found.slice(0, inSight).map((row) => (
              <RegisterLine key={row.id} row={row} columns={columns} />
            ))}
          </tbody>
        </table>
      </section>
      {found.length > inSight && (
        <button type="button" onClick={() => setInSight((n) => n + PAGE)}>
          {Math.min(PAGE, found.length - inSight)} more of {found.length}
        </button>
      )}
    </PageSection>
  );
}

interface LineProps {
  readonly row: JointRow;
  readonly columns: readonly JointColumn[];
}

const RegisterLine = ({ row, columns }: LineProps) => (
  <tr>
    <th scope="row">{row.label}</th>
    <td>
      <End end={row.from} />
    </td>
    <td>
      <End end={row.to} />
    </td>
    <td className={row.isApart ? 'open' : ''}>
      <Bagged row={row} />
    </td>
    {columns.map((column) => (
      <td key={column}>
        <CellShown
          cell={row.cells[column]}
          subject={row.id}
          property={column}
          of={`${propertyWords(column)} of ${row.label}`}
          optional={!ALWAYS.has(column)}
        />
      </td>
    ))}
  </tr>
);

/** Fasteners in its bags, and whether they are as many as its holes. */
function Bagged({ row: { bagged, bags, isApart } }: { readonly row: JointRow }) {
  if (bagged === undefined) return <span className="soft">none</span>;
  return (
    <>
      {bagged}
      {isApart && <b> differs</b>}
      {bags.length > 0 && <small className="soft"> {bags.join(', ')}</small>}
    </>
  );
}

/** One side: what it holds, each part a touch from the map; words that name nothing are open. */
function End({ end }: { readonly end: EndShown }) {
  const { select } = useSelection();
  return (
    <>
      {end.nodes.map(({ id, label }) => (
        <button key={id} type="button" className="link" onClick={() => select(id)}>
          {label}
        </button>
      ))}
      {end.lost.map((words) => (
        <span key={words} className="open">
          {words}, not in the study
        </span>
      ))}
      {end.nodes.length + end.lost.length === 0 && <span className="open">open</span>}
      {end.spoken !== '' && <small className="soft">{end.spoken}</small>}
    </>
  );
}

function filtered(rows: readonly JointRow[], text: string, show: Show): JointRow[] {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((w) => w !== '');
  return rows.filter((row) => shows(row, show) && words.every((w) => searched(row).includes(w)));
}

const hasOpenEnd = ({ nodes, lost }: EndShown): boolean => lost.length > 0 || nodes.length === 0;

function shows(row: JointRow, show: Show): boolean {
  if (show === 'bag and holes differ') return row.isApart;
  return show !== 'an end not known' || hasOpenEnd(row.from) || hasOpenEnd(row.to);
}

const searched = ({ label, from, to, cells }: JointRow): string =>
  [
    label,
    ...[from, to].flatMap((e) => [...e.nodes.map((n) => n.label), ...e.lost, e.spoken]),
    ...Object.values(cells).map((c) => (c.c === 'text' ? c.text : '')),
  ]
    .join(' ')
    .toLowerCase();
