/** How a board is laid out: its text beside the word, above and below it, or all in one long list. */
export type WallForm = 'beside' | 'under' | 'list';

/** What there is to lay boards on, px. */
export interface WallRoom {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Height that stands for 1 in the style sheet’s measures of text. */
  readonly textPx: number;
  /** The longest word that may have to be laid, in letter heights. */
  readonly longestWord: number;
  /** What stands above a letter, in letter heights. */
  readonly rise: number;
  readonly leastLetterPx: number;
  /** Lines of text beyond the usual ones that have to fit on a board. */
  readonly extraLines: number;
}

export interface WallLayout {
  readonly form: WallForm;
  readonly columns: number;
  readonly rows: number;
  readonly letterPx: number;
  /** How many boards are shown at once. */
  readonly perPage: number;
}

const MOST_COLUMNS = 3;
const MOST_ROWS = 12;
/** The mark beside the word and the gap before it, in letter heights. */
export const MARK = 0.68;
/** In text measures, see `wall.css`: column of text, gaps; strip and padding; lines of text. */
const BESIDE_TEXT_WIDTH = 27.5;
const BESIDE_GAPS = 3.5;
const UNDER_GAPS = 2.5;
const STRIP = 1.4;
const PADDING = 0.9;
const BESIDE_LINES = 7.6;
const UNDER_LINES = 5.2;
const LINE = 1.4;

/**
 * Letters of 17.5 mm at least, which are 20 arc-minutes at 3 m (trigonometry): 103 px on a 10.1-inch screen
 * of 1280 × 800, whose pixels are the densest among those that hang on walls. Larger ones grow with it.
 *
 * @param shorterSidePx - of the window
 */
export function leastLetter(shorterSidePx: number): number {
  return 104 * Math.max(1, shorterSidePx / 1080);
}

/** How much larger the text is than on a tablet. */
export function textScale(shorterSidePx: number): number {
  return Math.max(1, shorterSidePx / 800);
}

/**
 * As many boards as can be read from afar, spread evenly over the pages, with the largest letters.
 *
 * @param boards - on the whole wall, 1 or more
 * @returns `list`, to be scrolled, where not even one board can be shown with letters large enough
 */
export function wallLayout(room: WallRoom, boards: number): WallLayout {
  const possible = candidates(room);
  const most = Math.max(0, ...possible.map(({ perPage }) => perPage));
  if (most === 0) {
    return { form: 'list', columns: 1, rows: boards, letterPx: listLetter(room), perPage: boards };
  }
  const pages = Math.ceil(boards / most);
  const evenly = Math.ceil(boards / pages);
  const [best] = possible
    .filter(({ perPage }) => perPage >= evenly)
    .sort((a, b) => b.letterPx - a.letterPx || a.perPage - b.perPage || a.columns - b.columns);
  if (best === undefined) throw new Error('no layout holds what the largest one holds');
  return { ...best, perPage: evenly, rows: Math.ceil(evenly / best.columns) };
}

function candidates(room: WallRoom): WallLayout[] {
  const found: WallLayout[] = [];
  for (const form of ['beside', 'under'] as const) {
    for (let columns = 1; columns <= MOST_COLUMNS; columns += 1) {
      for (let rows = 1; rows <= MOST_ROWS; rows += 1) {
        const letterPx = Math.floor(letterIn(room, form, columns, rows));
        if (letterPx < room.leastLetterPx) break;
        found.push({ form, columns, rows, letterPx, perPage: columns * rows });
      }
    }
  }
  return found;
}

/** How high letters can be, px; 0 where the text does not fit. */
function letterIn(room: WallRoom, form: 'beside' | 'under', columns: number, rows: number): number {
  const { textPx, longestWord, rise, extraLines } = room;
  const height = room.heightPx / rows - (STRIP + PADDING) * textPx;
  const width = room.widthPx / columns;
  const wordWidths = longestWord + MARK;
  if (form === 'beside') {
    if (height < (BESIDE_LINES + LINE * extraLines) * textPx) return 0;
    const widest = (width - (BESIDE_TEXT_WIDTH + BESIDE_GAPS) * textPx) / wordWidths;
    return Math.min(widest, height / (1 + rise));
  }
  const left = height - (UNDER_LINES + LINE * extraLines) * textPx;
  return Math.min((width - UNDER_GAPS * textPx) / wordWidths, left / (1 + rise));
}

function listLetter({ widthPx, textPx, longestWord, leastLetterPx }: WallRoom): number {
  const widest = (widthPx - UNDER_GAPS * textPx) / (longestWord + MARK);
  return Math.floor(Math.min(leastLetterPx, widest));
}
