import { useSyncExternalStore } from 'react';

/** What a person sets for this browser. */
export interface Preferences {
  /** Name that stands beside what is recorded here. */
  readonly by: string;
  readonly theme: 'as the system' | 'day' | 'night';
  /** Size of what is touched: `hoist` for gloves. */
  readonly size: 'by the device' | 'desk' | 'hoist';
  /** Scale that was last weighed on here; empty for none. */
  readonly scale: string;
}

const KEY = 'hoistside.preferences';
const DEVICE = 'hoistside.device';
const USUAL: Preferences = { by: '', theme: 'as the system', size: 'by the device', scale: '' };

let current = read();
const listeners = new Set<() => void>();

function read(): Preferences {
  try {
    return { ...USUAL, ...(JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Preferences>) };
  } catch {
    return USUAL;
  }
}

export function setPreferences(set: Partial<Preferences>): void {
  current = { ...current, ...set };
  localStorage.setItem(KEY, JSON.stringify(current));
  applyPreferences();
  for (const listener of listeners) listener();
}

const subscribe = (listener: () => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

export const usePreferences = (): Preferences => useSyncExternalStore(subscribe, () => current);

/** Puts theme and size on the page, where the styles look for them. */
export function applyPreferences(): void {
  const { dataset } = document.documentElement;
  dataset.theme = { 'as the system': 'auto', day: 'day', night: 'night' }[current.theme];
  dataset.size = { 'by the device': 'auto', desk: 'desk', hoist: 'hoist' }[current.size];
}

/** Who records: the name given, else the browser's. */
export const recorder = (): string => current.by.trim() || 'unnamed';

/** Name by which this browser's changes are told from those of others; made at the first visit. */
export function deviceId(): string {
  const held = localStorage.getItem(DEVICE);
  if (held) return held;
  const made = `web-${crypto.randomUUID().slice(0, 8)}`;
  localStorage.setItem(DEVICE, made);
  return made;
}
