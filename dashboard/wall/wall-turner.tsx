import { listLine } from '../format/lists.ts';
import { useReader } from '../reader.ts';
import { SignMark } from './sign-mark.tsx';
import type { Turned } from './use-turning.ts';
import { elsewhere, type Urgency } from './wall-pages.ts';
import type { WallRow } from './wall-rows.ts';

type Ranked = WallRow & { readonly urgency: Urgency; readonly isTroubled: boolean };

interface WallTurnerProps {
  pages: readonly (readonly Ranked[])[];
  turned: Turned;
}

/** So many racks are named; the rest are counted. */
const NAMED = 2;

/** Which page is shown, how to turn it, and what wants something on the others. */
export function WallTurner({ pages, turned }: WallTurnerProps) {
  const { wall } = useReader().words;
  const { page, turn, turnsItself, setTurnsItself } = turned;
  return (
    <nav class="wall-turner" aria-label={wall.pages}>
      <button type="button" class="wall-turn" aria-label={wall.back} onClick={() => turn(-1)}>
        <Arrow isBack={true} />
      </button>
      <span class="wall-page-of">{wall.pageOf(page + 1, pages.length)}</span>
      <button type="button" class="wall-turn" aria-label={wall.next} onClick={() => turn(1)}>
        <Arrow isBack={false} />
      </button>
      <button type="button" class="wall-still" onClick={() => setTurnsItself(!turnsItself)}>
        {turnsItself ? wall.standStill : wall.turnOn}
      </button>
      <Also pages={pages} turned={turned} />
    </nav>
  );
}

/** The racks that want something and are not shown; a touch leads to the first of them. */
function Also({ pages, turned }: WallTurnerProps) {
  const { words, locale } = useReader();
  const { wall, signs } = words;
  const others = elsewhere(pages, turned.page);
  const [first] = others;
  if (first === undefined) return null;
  const racks = others
    .slice(0, NAMED)
    .map(({ board: { place, sign, isTroubled } }) =>
      wall.rackSays(place.name, isTroubled ? wall.needsLook : signs[sign].spoken),
    );
  if (others.length > NAMED) racks.push(wall.moreRacks(others.length - NAMED));
  const loud = first.board.urgency === 0 ? ' wall-also-trouble' : '';
  return (
    <button type="button" class={`wall-also${loud}`} onClick={() => turned.show(first.page)}>
      <SignMark sign={first.board.sign} />
      <span>{wall.also(listLine(racks, locale))}</span>
    </button>
  );
}

function Arrow({ isBack }: { isBack: boolean }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      <path d={isBack ? 'M16 3H20L12 12L20 21H16L7 12Z' : 'M8 3H4L12 12L4 21H8L17 12Z'} />
    </svg>
  );
}
