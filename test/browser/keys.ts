import type { Page, Request } from 'playwright-core';
import { expect } from 'vitest';

/** One thing done with the keys, or looked for. */
export type Step =
  /** Tab until this has the focus: what it is called, or how that begins. */
  | { readonly to: string }
  /** The same backwards. */
  | { readonly back: string }
  | { readonly press: string; readonly times?: number }
  | { readonly type: string }
  /** A text that comes up. */
  | { readonly see: string | RegExp }
  /** What has the focus now. */
  | { readonly at: string }
  /** What was refused: it has the focus, and is marked. */
  | { readonly refused: string };

const MOST_TABS = 90;

interface Focused {
  readonly name: string;
  /** Follows, in the document, what had the focus before. */
  readonly inOrder: boolean;
  readonly isShown: boolean;
  readonly isOnScreen: boolean;
}

/** Walks a page with the keys alone, and holds every step to what whoever walks so depends on. */
export async function walk(page: Page, steps: readonly Step[]): Promise<void> {
  const { keyboard } = page;
  const settled = watchAnswers(page);
  await settled();
  for (const step of steps) {
    if ('to' in step) await tab(page, step.to, 'Tab');
    else if ('back' in step) await tab(page, step.back, 'Shift+Tab');
    else if ('type' in step) await keyboard.type(step.type);
    else if ('see' in step) await page.getByText(step.see).first().waitFor();
    else if ('at' in step) await expect.poll(() => nameOfFocused(page)).toBe(step.at);
    else if ('refused' in step) {
      await expect.poll(() => nameOfFocused(page)).toBe(step.refused);
      await page.locator('[aria-invalid="true"]:focus').waitFor();
    } else {
      for (let i = 0; i < (step.times ?? 1); i++) await keyboard.press(step.press);
      // Whatever it did, the focus is still somewhere on the page.
      await expect.poll(() => nameOfFocused(page), { message: `after ${step.press}` }).not.toBe('');
      // Whoever reads the page goes on once it stands: a form that is still to come would be walked past.
      await settled();
    }
  }
  await expect.poll(() => nameOfFocused(page), { message: 'at the end' }).not.toBe('');
}

/** Tells when everything that was asked of the daemon is answered, and drawn. */
function watchAnswers(page: Page): () => Promise<void> {
  const open = new Set<Request>();
  const isAsked = (request: Request) => /\/api\/(?!v1\/stream)/.test(request.url());
  page.on('request', (request) => void (isAsked(request) && open.add(request)));
  const ended = (request: Request) => void open.delete(request);
  page.on('requestfinished', ended);
  page.on('requestfailed', ended);
  const drawn = () =>
    page.evaluate(
      () =>
        new Promise<void>((done) =>
          requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done))),
        ),
    );
  return async () => {
    // What was opened is drawn first, and asks then; what was answered may ask on.
    do {
      await drawn();
      await expect.poll(() => open.size).toBe(0);
      await drawn();
    } while (open.size > 0);
  };
}

async function tab(page: Page, wanted: string, key: 'Tab' | 'Shift+Tab'): Promise<void> {
  const passed: string[] = [];
  while (passed.length <= MOST_TABS) {
    await page.evaluate(() => {
      const kept = window as unknown as { walkedFrom?: Element };
      kept.walkedFrom = document.activeElement ?? document.body;
    });
    await page.keyboard.press(key);
    const { name, inOrder, isShown, isOnScreen } = await focused(page, key === 'Tab');
    passed.push(name);
    if (name === '') continue;
    expect({ name, inOrder, isShown, isOnScreen }, `after ${passed.at(-2)}`).toEqual({
      ...{ name, inOrder: true, isShown: true, isOnScreen: true },
    });
    if (name.startsWith(wanted)) return;
  }
  throw new Error(`${wanted} was not reached: ${passed.join(', ')}`);
}

/** What has the focus, by its label or its text; empty while nothing has. */
export async function nameOfFocused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const at = document.activeElement as HTMLInputElement | null;
    if (at === null || at === document.body) return '';
    const text = at.getAttribute('aria-label') ?? at.labels?.[0]?.textContent ?? at.textContent;
    return (text ?? '').replace(/\s+/g, ' ').trim() || at.tagName;
  });
}

/** The same with whether one sees it, and whether it comes after what was there before. */
async function focused(page: Page, isForward: boolean): Promise<Focused> {
  const name = await nameOfFocused(page);
  const seen = await page.evaluate((forward) => {
    const kept = window as unknown as { walkedFrom?: Element };
    const at = document.activeElement ?? document.body;
    const before = kept.walkedFrom;
    const follows = before?.compareDocumentPosition(at) ?? 0;
    const wanted = forward
      ? Node.DOCUMENT_POSITION_FOLLOWING
      : Node.DOCUMENT_POSITION_PRECEDING | Node.DOCUMENT_POSITION_CONTAINS;
    // From the end of the page one comes to its beginning again.
    const isAround = before === undefined || before === document.body || !before.isConnected;
    // A choice shows the focus on the words beside its input.
    const shown = [at, at.nextElementSibling, at.parentElement];
    const isShown = shown.some((one) => {
      if (one === null) return false;
      const { outlineStyle, outlineWidth } = getComputedStyle(one);
      return outlineStyle !== 'none' && outlineWidth !== '0px';
    });
    const box = (
      at.matches('input[type="radio"], input[type="checkbox"]') && at.parentElement
        ? at.parentElement
        : at
    ).getBoundingClientRect();
    const middle = (box.top + Math.min(box.bottom, box.top + innerHeight)) / 2;
    return {
      inOrder: isAround || (follows & wanted) !== 0 || at === before,
      isShown,
      isOnScreen: middle >= 0 && middle <= innerHeight && box.width > 0,
    };
  }, isForward);
  return { name, ...seen };
}
