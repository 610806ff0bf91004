import type { Caution } from '../../../src/engine/index.ts';
import { WarningSign } from './warning-sign.tsx';

/** What can hurt in taking these readings; local rules and licensed people come first. */
export function Cautions({ cautions }: { readonly cautions: readonly Caution[] }) {
  if (cautions.length === 0) return null;
  return (
    <section className="cautions" aria-label="Cautions">
      {cautions.map((c) => (
        <div key={c.id} className="caution">
          <WarningSign />
          <p>
            {c.words} <small>({c.source})</small>
          </p>
        </div>
      ))}
    </section>
  );
}
