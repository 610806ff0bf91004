import { useClient, useDesk } from './desk-client.ts';
import { recorder } from './preferences.ts';

/** Takes back, in one touch, the last thing that was done in this browser. */
export function UndoButton() {
  const { desk } = useClient();
  const history = useDesk(['history'], (d) => d.history());
  const last = history.data?.find((h) => h.own && !h.undone && h.undoes === undefined);
  return (
    <button
      type="button"
      disabled={!last}
      onClick={() => last && void desk.undo(last.gesture, recorder())}
    >
      Undo<span className="heard">{last ? `: ${last.words}` : ', nothing to take back'}</span>
    </button>
  );
}
