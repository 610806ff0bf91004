/** What the driver can bind without harm. */
export type Bindable = string | number | bigint | null | Uint8Array;

/**
 * The one door for values into SQL. The driver ends the whole process on a boolean and stores
 * NULL for undefined, NaN and parameters that are missing, without a word; text it cuts at a zero
 * character. So booleans become 0 or 1, and what would be lost is a defect of ours, named by its
 * place among the parameters.
 * @throws TypeError
 */
export function bindGuard(parameters: readonly unknown[], wanted: number): Bindable[] {
  if (parameters.length !== wanted)
    throw new TypeError(`the statement takes ${wanted} parameters, not ${parameters.length}`);
  return parameters.map(bindable);
}

/** Parameters that a statement takes: question marks outside quotes. */
export const parametersIn = (sql: string): number =>
  sql.replace(/'[^']*'|"[^"]*"/g, '').split('?').length - 1;

function bindable(value: unknown, index: number): Bindable {
  if (typeof value === 'bigint' || value === null) return value;
  if (typeof value === 'string' && !value.includes('\0')) return value;
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (value instanceof Uint8Array) return value;
  throw new TypeError(`parameter ${index + 1} can not be bound: ${describe(value)}`);
}

const describe = (value: unknown): string =>
  typeof value === 'string'
    ? 'text with a zero character'
    : typeof value === 'object'
      ? Object.prototype.toString.call(value)
      : String(value);
