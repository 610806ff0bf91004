import { PageSection } from '../answer-page/answer-page.tsx';
import { Asked } from '../answer-page/asked.tsx';
import { useDesk } from '../app/desk-client.ts';
import { CellShown } from '../parts/cell-shown.tsx';
import type { FasteningCell, FasteningChoice } from '../worker/fastening-rows.ts';

/** Ways to fasten one thing, with all that must be known before two of them can be compared. */
export function FasteningMatrix() {
  const { data } = useDesk(['fastenings'], (d) => d.fastenings());
  return data?.map((choice) => (
    <PageSection key={choice.id} title={`Fastenings: ${choice.name}`} wide>
      <p className="soft">
        Nut side, capital, assembly, removal, renewal and parting are filled, or said to be not
        applicable, before two are compared. Touch an open figure to fill it; write “not applicable”
        where it does not apply.
      </p>
      <Matrix choice={choice} />
      <Asked
        question="fastening-comparison"
        of={choice.id}
        title="The first two compared"
        shows={['results', 'figures', 'table', 'findings']}
      />
    </PageSection>
  ));
}

const Matrix = ({ choice }: { readonly choice: FasteningChoice }) => (
  <div className="table-scroll">
    <table className="register">
      <thead>
        <tr>
          <th scope="col">about</th>
          <th scope="col">figure</th>
          {choice.ways.map((way) => (
            <th scope="col" key={way.id}>
              {way.label} <small className="soft">{way.name}</small>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {choice.figures.map(({ about, meaning }, i) => (
          <tr key={meaning}>
            <td>{about}</td>
            <th scope="row">{meaning}</th>
            {choice.ways.map((way) => {
              const cell = way.cells[i];
              return (
                <td key={way.id}>
                  {cell && (
                    <FigureCell cell={cell} subject={way.id} of={`${meaning} of ${way.label}`} />
                  )}
                </td>
              );
            })}
          </tr>
        ))}
        <tr>
          <td />
          <th scope="row">open</th>
          {choice.ways.map(({ id, cells }) => {
            const open = cells.filter((c) => c.state === 'open').length;
            return (
              <td key={id} className={open > 0 ? 'open' : ''}>
                {open === 0 ? 'nothing' : `${open} figures`}
              </td>
            );
          })}
        </tr>
      </tbody>
    </table>
  </div>
);

interface FigureCellProps {
  readonly cell: FasteningCell;
  readonly subject: string;
  readonly of: string;
}

const FigureCell = ({ cell: { cell, property }, subject, of }: FigureCellProps) => (
  <CellShown cell={cell} subject={subject} property={property} of={of} />
);
