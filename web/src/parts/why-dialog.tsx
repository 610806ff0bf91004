import { type ReactNode, useState } from 'react';
import { CellWhy } from './cell-why.tsx';
import { OutWhy } from './out-why.tsx';
import { SheetDialog } from './sheet-dialog.tsx';
import { WhyContext, type WhyTarget } from './why.tsx';

/**
 * Lets every number inside open its origin in one touch; from an output one gets on to the
 * readings behind it, and back.
 */
export function WhyProvider({ children }: { readonly children: ReactNode }) {
  const [trail, setTrail] = useState<readonly WhyTarget[]>([]);
  const target = trail.at(-1);
  const open = (next: WhyTarget) => setTrail((before) => [...before, next]);
  return (
    <WhyContext value={open}>
      {children}
      {target && (
        <SheetDialog title="Where it comes from" place="side" onClose={() => setTrail([])}>
          {trail.length > 1 && (
            <button type="button" onClick={() => setTrail((before) => before.slice(0, -1))}>
              Back
            </button>
          )}
          {target.of === 'cell' ? (
            <CellWhy
              key={`${target.subject} ${target.property}`}
              subject={target.subject}
              property={target.property}
            />
          ) : (
            <OutWhy
              key={`${target.question} ${target.subject} ${target.output}`}
              {...target}
              onLeave={() => setTrail([])}
            />
          )}
        </SheetDialog>
      )}
    </WhyContext>
  );
}
