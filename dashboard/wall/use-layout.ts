import { useLayoutEffect, useState } from 'preact/hooks';
import { LETTER_HEIGHT, LETTER_RISE, layWord, risesAbove } from '../lettering/planks.ts';
import type { Words } from '../words/words.ts';
import { useRoom } from './use-room.ts';
import { leastLetter, MARK, type WallLayout, wallLayout } from './wall-layout.ts';

/** With so many lines more it is a list that is scrolled. */
const MOST_EXTRA_LINES = 12;
const LOST_LINES = -2;

export interface Laid extends WallLayout {
  /** In letter heights. */
  readonly rise: number;
  /** Of the longest word with its mark, in letter heights. */
  readonly wordWidths: number;
  /** Whether the room is measured that they are laid in: boards drawn before are drawn twice. */
  readonly isMeasured: boolean;
}

/**
 * How the boards are laid so that everything on them is read: where their text does not fit, fewer are shown.
 *
 * @param wall - holds the boards
 * @param boards - how many there are in all
 * @param isLost - whether the daemon is: boards then say less
 */
export function useLayout(
  wall: { readonly current: HTMLElement | null },
  boards: number,
  signs: Words['signs'],
  isLost: boolean,
): Laid {
  const room = useRoom(wall);
  const laidWords = Object.values(signs).map(({ laid }) => laid);
  const longestWord = Math.max(...laidWords.map((word) => layWord(word).width)) / LETTER_HEIGHT;
  const rise = laidWords.some(risesAbove) ? LETTER_RISE / LETTER_HEIGHT : 0;
  const [extra, setExtra] = useState({ for: '', lines: 0 });
  const asked = JSON.stringify([room, boards, longestWord, isLost]);
  const extraLines = extra.for === asked ? extra.lines : isLost ? LOST_LINES : 0;
  const isTooSmall = !room.isWall || extraLines > MOST_EXTRA_LINES;
  const layout = wallLayout(
    {
      widthPx: room.widthPx,
      heightPx: isTooSmall ? 0 : room.heightPx,
      textPx: room.remPx,
      longestWord,
      rise,
      leastLetterPx: leastLetter(room.shorterSidePx),
      extraLines,
    },
    Math.max(1, boards),
  );
  // After every drawing: what came in may be longer than what stood there.
  useLayoutEffect(() => {
    if (layout.form === 'list') return;
    const shown = [...(wall.current?.querySelectorAll('.wall-board') ?? [])];
    if (shown.some((board) => board.scrollHeight > board.clientHeight + 1)) {
      setExtra({ for: asked, lines: extraLines + 1 });
    }
  });
  return { ...layout, rise, wordWidths: longestWord + MARK, isMeasured: room.isMeasured };
}
