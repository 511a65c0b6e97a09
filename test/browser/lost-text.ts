import type { Page } from 'playwright-core';

/**
 * Text on a page that a person cannot read: off the page, cut off, sticking out of its box, or
 * under other text. One line for each piece, empty when all can be read. What the wall shortens to
 * two lines on purpose stands in full on another page and is not counted.
 */
export function lostText(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    interface Box {
      readonly parent: Box | null;
      readonly rect: DOMRect;
      readonly isInline: boolean;
      readonly isScrolled: boolean;
      readonly cutsX: boolean;
      readonly cutsY: boolean;
      readonly isClamped: boolean;
      readonly isForEars: boolean;
      readonly isAfloat: boolean;
      readonly fontPx: number;
    }
    interface Piece {
      readonly text: string;
      readonly element: Element;
      readonly box: Box;
      readonly lines: readonly DOMRect[];
    }
    const known = new Map<Element, Box>();
    const boxOf = (element: Element): Box => {
      const before = known.get(element);
      if (before !== undefined) return before;
      const parent = element.parentElement === null ? null : boxOf(element.parentElement);
      const style = getComputedStyle(element);
      const rect = element.getBoundingClientRect();
      const overflow = style.overflowX + style.overflowY;
      const box: Box = {
        parent,
        rect,
        isInline: /^(inline|contents)$/.test(style.display),
        isScrolled: /auto|scroll/.test(overflow) && element !== document.documentElement,
        cutsX: /hidden|clip/.test(style.overflowX),
        cutsY: /hidden|clip/.test(style.overflowY),
        isClamped: style.webkitLineClamp !== 'none',
        // For those who listen: clipped on purpose.
        isForEars:
          (parent?.isForEars ?? false) ||
          style.clipPath === 'inset(50%)' ||
          (rect.width <= 1 && rect.height <= 1 && overflow !== 'visiblevisible'),
        isAfloat: (parent?.isAfloat ?? false) || /fixed|sticky/.test(style.position),
        fontPx: Number.parseFloat(style.fontSize),
      };
      known.set(element, box);
      return box;
    };

    const width = document.documentElement.clientWidth;
    const lost: string[] = [];
    const say = (what: string, { text, element }: Piece, more: string) => {
      const classes = [...element.classList].map((name) => `.${name}`).join('');
      const name = element.tagName.toLowerCase() + classes;
      lost.push(`${what}: “${text.slice(0, 60)}” in ${name}, ${more}`);
    };
    const pieces: Piece[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const element = node.parentElement;
      const text = node.textContent?.trim() ?? '';
      if (element === null || text === '') continue;
      if (element.closest('svg, script, style, option') || !element.checkVisibility()) continue;
      const box = boxOf(element);
      if (box.isForEars) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const lines = [...range.getClientRects()].filter((line) => line.width > 0.5);
      if (lines.length > 0) pieces.push({ text, element, box, lines });
    }

    for (const piece of pieces) {
      const left = Math.min(...piece.lines.map((line) => line.left));
      const right = Math.max(...piece.lines.map((line) => line.right));
      const top = Math.min(...piece.lines.map((line) => line.top));
      const bottom = Math.max(...piece.lines.map((line) => line.bottom));
      let isScrolled = false;
      for (let at: Box | null = piece.box; at !== null && !isScrolled; at = at.parent) {
        const { rect, isInline, cutsX, cutsY, isClamped, fontPx } = at;
        isScrolled = at.isScrolled || isClamped;
        if (isInline || isScrolled) continue;
        const tooWide = Math.max(right - rect.right, rect.left - left);
        // Letters may reach out of a tight line, whole lines may not.
        const tooHigh = Math.max(bottom - rect.bottom, rect.top - top) - fontPx / 2;
        if ((cutsX && tooWide > 1) || (cutsY && tooHigh > 0)) {
          say('cut off', piece, `${Math.round(Math.max(tooWide, tooHigh))} px`);
          break;
        }
        if (at === piece.box && tooWide > 1.5)
          say('sticks out', piece, `${Math.round(tooWide)} px`);
      }
      if (!isScrolled && (right > width + 1 || left < -1)) {
        say('off the page', piece, `${Math.round(Math.max(right - width, -left))} px`);
      }
    }

    // Letters fill about the middle half of a line; lines may touch.
    const flat = pieces
      .filter(({ box }) => !box.isAfloat)
      .flatMap((piece) =>
        piece.lines.map((line) => ({
          piece,
          left: line.left + 1,
          right: line.right - 1,
          top: line.top + line.height / 4,
          bottom: line.bottom - line.height / 4,
        })),
      )
      .sort((a, b) => a.top - b.top);
    flat.forEach((one, index) => {
      for (const other of flat.slice(index + 1, index + 200)) {
        if (other.top >= one.bottom) break;
        if (one.piece === other.piece) continue;
        if (other.left >= one.right || other.right <= one.left) continue;
        say('under other text', one.piece, `“${other.piece.text.slice(0, 40)}”`);
      }
    });
    const tooWide = document.documentElement.scrollWidth - width;
    if (tooWide > 1) lost.push(`the page is ${tooWide} px wider than its window`);
    return [...new Set(lost)];
  });
}
