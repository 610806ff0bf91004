import { PageSection } from '../answer-page/answer-page.tsx';
import { useDesk } from '../app/desk-client.ts';
import { FigureShown } from '../figure/figure-shown.tsx';
import { Refusals } from '../parts/refusals.tsx';

/** By what the cost of the parts differs between the last two versions of the rates. */
export function CostByCause() {
  const { data, error } = useDesk(['cost-by-cause'], (desk) => desk.costByCause());
  return (
    <PageSection title="Since the rates before">
      <Refusals error={error} />
      {data === null && (
        <p className="open">
          <b>open</b> <small>the study has one version of the rates, or none</small>
        </p>
      )}
      {data && (
        <>
          <FigureShown figure={data.figure} />
          <p>
            <small>Shared out: {data.averaging}.</small>
          </p>
        </>
      )}
    </PageSection>
  );
}
