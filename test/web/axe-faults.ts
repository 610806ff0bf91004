import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** What axe finds wrong, contrast of 7:1 included (WCAG 2.2, 1.4.6). */
export async function axeFaults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .options({
      rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } },
    })
    .analyze();
  return violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 160)).join(' | ')}`);
}
