import { type Browser, chromium } from 'playwright-core';
import { findBinary } from '../../scripts/ensure-debian.ts';

/** Keeps the browser from calling home, and lets it run as root and without a screen. */
export const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A real browser. @throws Error that says what to install where there is none. */
export function openBrowser(): Promise<Browser> {
  const executablePath = findBinary('chromium');
  if (!executablePath)
    throw new Error('chromium is missing: npm test installs it, or install the package chromium.');
  return chromium.launch({ executablePath, args: FLAGS });
}
