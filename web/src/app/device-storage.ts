import { useQuery } from '@tanstack/react-query';

/** The room that the browser gives this application, bytes. */
export interface DeviceStorage {
  readonly used: number;
  readonly quota: number;
  /** The browser promises not to clear it by itself. */
  readonly isPersistent: boolean;
}

/** Share of the room from which people are warned. */
const NEARLY_FULL = 0.8;
const LOOK_EVERY_MS = 30_000;

/** Asks the browser to keep what is recorded here until a person deletes it. */
export const askToPersist = async (): Promise<boolean> =>
  (await navigator.storage?.persist?.()) ?? false;

async function lookAtStorage(): Promise<DeviceStorage> {
  const { usage: used = 0, quota = 0 } = (await navigator.storage?.estimate?.()) ?? {};
  return { used, quota, isPersistent: (await navigator.storage?.persisted?.()) ?? false };
}

export function useDeviceStorage(): DeviceStorage | undefined {
  const { data } = useQuery({
    queryKey: ['device storage'],
    queryFn: lookAtStorage,
    refetchInterval: LOOK_EVERY_MS,
    staleTime: 0,
  });
  return data;
}

export const isNearlyFull = ({ used, quota }: DeviceStorage): boolean =>
  quota > 0 && used > NEARLY_FULL * quota;

/** "12 MB", "1.4 GB": decimal units, as browsers and disks count. */
export function roomText(bytes: number): string {
  if (bytes < 1e6) return `${Math.ceil(bytes / 1e3)} kB`;
  if (bytes < 1e9) return `${Math.round(bytes / 1e6)} MB`;
  return `${(bytes / 1e9).toFixed(1)} GB`;
}
