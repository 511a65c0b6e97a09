import { drawPanel } from '../../dashboard/chart/draw-panel.ts';
import { toPanels } from '../../dashboard/chart/to-panels.ts';
import { wholeRangeOf } from '../../dashboard/chart/whole-range.ts';
import { panelWriting } from '../../dashboard/chart/writing.ts';
import { createZoneClock } from '../../dashboard/chart/zone-clock.ts';
import { createCalendar } from '../../dashboard/format/calendar.ts';
import { createFigures } from '../../dashboard/format/reader-figures.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';

const clock = createZoneClock();
const reader = {
  words: { ...first, ...rest },
  ...{ locale: 'en-GB', units: 'metric' as const },
  figures: createFigures('en-GB', 'metric'),
  calendar: createCalendar(undefined, 'en-GB'),
};

/**
 * Draws a reply as the pages do.
 *
 * @param text - of the reply, as it comes over the line
 * @returns takes it away again
 */
export async function draw(text: string, desk: HTMLElement): Promise<() => void> {
  const curves = JSON.parse(text);
  const range = wholeRangeOf(curves);
  const panels = toPanels({ curves, changes: null, coat: null, units: 'metric' });
  const drawn = panels.map((panel, i) => {
    const target = document.createElement('div');
    desk.append(target);
    const view = { panel, range, marks: [], writing: panelWriting(panel.kind, reader, clock) };
    return drawPanel(target, view, {
      ...{ syncKey: 'bench', isFirst: i === 0, isLast: i === panels.length - 1 },
      ...{ scale: 1, width: 1_200, stretch: 1, onCursor: () => {} },
    });
  });
  // The library draws in a microtask of its own.
  await new Promise((resolve) => setTimeout(resolve));
  return () => {
    for (const panel of drawn) panel.close();
    desk.replaceChildren();
  };
}
