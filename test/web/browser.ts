import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';

/** A page of its own, as a first visitor sees it; `errors` collects what breaks in it. */
export async function openPage(
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<{ page: Page; errors: string[] }> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  await page.goto(address);
  return { page, errors };
}

/** What is seen of an element, with all kinds of blanks alike. */
export const seenText = async (of: Locator): Promise<string> =>
  (await of.allInnerTexts()).join(' ').replace(/\s+/g, ' ').trim();
