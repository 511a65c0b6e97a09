import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');

/** What axe finds wrong on a page by WCAG 2, levels A and AA; one line for each rule. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(source);
  const results = await page.evaluate(() =>
    (
      globalThis as unknown as {
        axe: { run: (on: Document, how: object) => Promise<AxeResults> };
      }
    ).axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }),
  );
  return results.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`,
  );
}
