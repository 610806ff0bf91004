import { type TransferHandler, transferHandlers } from 'comlink';
import { type Refusal, RefusalError } from '../../../src/study/index.ts';

/** An error on its way between worker and page. */
interface Packed {
  readonly isError: true;
  readonly value: {
    readonly message: string;
    readonly name: string;
    readonly stack?: string | undefined;
    readonly refusals?: readonly Refusal[];
  };
}
interface Thrown {
  readonly value: unknown;
}

/**
 * Lets a RefusalError pass between worker and page with its refusals; to be called on both
 * sides before the first call. Other errors go as they did.
 */
export function carryRefusals(): void {
  const plain = transferHandlers.get('throw') as TransferHandler<Thrown, unknown> | undefined;
  if (!plain) throw new TypeError('comlink has no handler for what is thrown');
  const handler: TransferHandler<Thrown, unknown> = {
    canHandle: plain.canHandle,
    serialize: (thrown) => {
      const { value } = thrown;
      if (!(value instanceof RefusalError)) return plain.serialize(thrown);
      const { message, name, stack, refusals } = value;
      const packed: Packed = { isError: true, value: { message, name, stack, refusals } };
      return [packed, []];
    },
    deserialize: (packed) => {
      const [first, ...more] = (packed as Packed).value?.refusals ?? [];
      if (first) throw new RefusalError(first, ...more);
      return plain.deserialize(packed);
    },
  };
  transferHandlers.set('throw', handler);
}
