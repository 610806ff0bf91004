/** What the driver can bind without harm. */
export type Bindable = string | number | bigint | null | Uint8Array;

/**
 * The one door for values into SQL. The driver ends the whole process on a boolean and stores
 * NULL for undefined and NaN without a word, so booleans become 0 or 1 and what would be lost
 * is a defect of ours, named by its place among the parameters.
 * @throws TypeError
 */
export function bindGuard(parameters: readonly unknown[]): Bindable[] {
  return parameters.map(bindable);
}

function bindable(value: unknown, index: number): Bindable {
  if (typeof value === 'string' || typeof value === 'bigint' || value === null) return value;
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (value instanceof Uint8Array) return value;
  throw new TypeError(`parameter ${index + 1} can not be bound: ${describe(value)}`);
}

const describe = (value: unknown): string =>
  typeof value === 'object' ? Object.prototype.toString.call(value) : String(value);
