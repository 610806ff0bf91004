/**
 * An object with further fields that are worked out when they are first read: they are fields
 * like any other, also to JSON and to a worker's messages.
 */
export function withLazy<T extends object, L extends object>(
  base: T,
  makers: { readonly [K in keyof L]: () => L[K] },
): T & L {
  for (const key of Object.keys(makers) as (keyof L)[]) {
    const settle = (value: L[keyof L]) =>
      Object.defineProperty(base, key, { value, enumerable: true, writable: true });
    Object.defineProperty(base, key, {
      enumerable: true,
      configurable: true,
      get: () => {
        const value = makers[key]();
        settle(value);
        return value;
      },
    });
  }
  return base as T & L;
}
