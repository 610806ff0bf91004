import { useEffect, useRef } from 'react';
import { placeText, type Refusal, RefusalError } from '../../../src/study/index.ts';

/** Refusals in sight before the rest folds away. */
const IN_SIGHT = 6;

/** What is wrong, where, with which value, and what to do next. */
export function Refusals({ error }: { readonly error: unknown }) {
  const box = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new error comes into sight
  useEffect(() => {
    box.current?.scrollIntoView({ block: 'nearest' });
  }, [error]);
  if (error === null || error === undefined) return null;
  const refusals = error instanceof RefusalError ? error.refusals : undefined;
  return (
    <div ref={box} role="alert" className="refusals open">
      {refusals ? (
        <>
          <RefusalItems refusals={refusals.slice(0, IN_SIGHT)} />
          {refusals.length > IN_SIGHT && (
            <details>
              <summary>{refusals.length - IN_SIGHT} more</summary>
              <RefusalItems refusals={refusals.slice(IN_SIGHT)} />
            </details>
          )}
        </>
      ) : (
        <p>
          <b>This did not work.</b> {error instanceof Error ? error.message : String(error)}
        </p>
      )}
    </div>
  );
}

const RefusalItems = ({ refusals }: { readonly refusals: readonly Refusal[] }) => (
  <ul>
    {refusals.map((r) => (
      <li key={`${placeText(r.place)} ${r.why} ${r.value ?? ''}`}>
        <RefusalLine refusal={r} />
      </li>
    ))}
  </ul>
);

function RefusalLine({ refusal }: { readonly refusal: Refusal }) {
  const place = placeText(refusal.place);
  return (
    <>
      {place !== '' && <b>{place}: </b>}
      {refusal.why}
      {refusal.value !== undefined && refusal.value !== '' && <> (found “{refusal.value}”)</>}.{' '}
      <em>{refusal.next}</em>
    </>
  );
}
