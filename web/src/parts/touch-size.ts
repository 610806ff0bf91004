import { useEffect, useState } from 'react';
import { usePreferences } from '../app/preferences.ts';

/** Least size of what is touched, CSS pixels, as the styles have it for this device. */
export function useTouchSize(): number {
  const { size } = usePreferences();
  const [pixels, setPixels] = useState(DESK);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the styles change with the preference
  useEffect(() => setPixels(measured()), [size]);
  return pixels;
}

const DESK = 36;

/** The length that `--touch` stands for, by an element that has it. */
function measured(): number {
  const probe = document.createElement('div');
  probe.style.cssText = 'position:absolute;visibility:hidden;block-size:var(--touch)';
  document.body.append(probe);
  const { height } = probe.getBoundingClientRect();
  probe.remove();
  return height || DESK;
}
