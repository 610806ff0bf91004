import { proxy } from 'comlink';
import { useCallback, useEffect, useState } from 'react';
import type { Progress, Sampled, SampleOptions } from '../../../src/engine/index.ts';
import { useClient } from '../app/desk-client.ts';
import { Refusals } from '../parts/refusals.tsx';
import { SampledTable } from './sampled-table.tsx';

/** Starts a run of the answer at hand in the worker. */
export type StartSampling = (
  options: SampleOptions,
  told: (progress: Progress) => void,
) => Promise<Sampled | undefined>;

type State =
  | { readonly is: 'not begun' | 'stopped' }
  | { readonly is: 'under way'; readonly progress: Progress | undefined }
  | { readonly is: 'done'; readonly sampled: Sampled }
  | { readonly is: 'failed'; readonly error: unknown };

export interface SamplingShownProps {
  readonly start: StartSampling;
  /** The linear spread is doubted: it is sampled without being asked. */
  readonly isInDoubt: boolean;
}

/** Monte Carlo of one answer: begun by hand, or by itself where the linear spread is in doubt. */
export function SamplingShown({ start, isInDoubt }: SamplingShownProps) {
  const { desk } = useClient();
  const [state, setState] = useState<State>({ is: 'not begun' });
  const begin = useCallback(
    async (options: SampleOptions) => {
      setState({ is: 'under way', progress: undefined });
      const told = proxy((progress: Progress) => setState({ is: 'under way', progress }));
      try {
        const sampled = await start(options, told);
        setState(sampled ? { is: 'done', sampled } : { is: 'stopped' });
      } catch (error) {
        setState({ is: 'failed', error });
      }
    },
    [start],
  );
  useEffect(() => {
    if (isInDoubt) void begin({});
    return () => void desk.stopSampling();
  }, [isInDoubt, begin, desk]);
  return (
    <section className="sampling" aria-label="Monte Carlo" aria-live="polite">
      <h3>By Monte Carlo</h3>
      {state.is === 'under way' ? (
        <UnderWay progress={state.progress} onStop={() => void desk.stopSampling()} />
      ) : (
        <p className="acts">
          <button type="button" onClick={() => void begin({})}>
            {state.is === 'done' ? 'Sample again' : 'Sample it'}
          </button>
          <button type="button" onClick={() => void begin({ indices: true })}>
            With what causes do together
          </button>
          {state.is === 'stopped' && <span>Stopped: nothing of it is kept.</span>}
        </p>
      )}
      {state.is === 'done' && <SampledTable sampled={state.sampled} />}
      {state.is === 'failed' && <Refusals error={state.error} />}
    </section>
  );
}

interface UnderWayProps {
  readonly progress: Progress | undefined;
  readonly onStop: () => void;
}

const UnderWay = ({ progress, onStop }: UnderWayProps) => (
  <p className="acts">
    <progress
      max={progress?.most ?? 1}
      value={progress?.samples ?? 0}
      aria-label="samples drawn, of those at most"
    />
    <span className="digits">
      {progress ? `${progress.samples.toLocaleString('en')} samples` : 'begun'}
    </span>
    <button type="button" onClick={onStop}>
      Stop
    </button>
  </p>
);
