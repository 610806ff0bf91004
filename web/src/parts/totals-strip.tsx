import { OutNumber } from './out-number.tsx';
import { useOut } from './use-out.ts';

/** Totals that an edit moves, in sight while one edits. */
export function TotalsStrip() {
  const parts = useOut('mass-closure', 'parts');
  const scales = useOut('mass-closure', 'scales');
  const gap = useOut('mass-closure', 'gap');
  const x = useOut('mass-roll-up', 'x');
  const z = useOut('mass-roll-up', 'z');
  const scalesX = useOut('cg-from-corners', 'x');
  const scalesZ = useOut('cg-height-axle-lift', 'height');
  const cost = useOut('part-cost', 'cost');
  const totals = [
    { name: 'parts', found: parts },
    { name: 'scales', found: scales },
    { name: 'gap', found: gap },
    { name: 'X', found: x, beside: scalesX },
    { name: 'Z', found: z, beside: scalesZ },
    { name: 'cost', found: cost },
  ];
  return (
    <dl className="totals" aria-label="Totals">
      {totals.map(({ name, found, beside }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            {found ? (
              <OutNumber found={found} {...(beside ? { beside: [beside.out] } : {})} />
            ) : (
              <span className="open">open</span>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
