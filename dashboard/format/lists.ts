import type { Face, Mixture } from '../../daemon/contract/plan.ts';
import type { RestWords } from '../words/words.ts';

type Things = RestWords['things'];

/** The mixture as a painter says it: “35 paint : 50 raw linseed oil : 15 turpentine”. */
export function mixtureLine(mixture: Mixture, things: Things): string {
  const { paint, rawLinseedOil, turpentine } = mixture;
  if (paint > 0 && rawLinseedOil === 0 && turpentine === 0) return things.undiluted;
  return (['paint', 'rawLinseedOil', 'turpentine'] as const)
    .filter((part) => mixture[part] > 0)
    .map((part) => `${mixture[part]} ${things.ingredients[part]}`)
    .join(' : ');
}

/**
 * “face, back, edges and ends”.
 *
 * @param locale - BCP 47 tag whose way of joining a list is used
 */
export function facesLine(faces: readonly Face[], things: Things, locale: string): string {
  return listLine(
    faces.map((face) => things.faces[face]),
    locale,
  );
}

/** “one, two and three”, as the language joins them. */
export function listLine(items: readonly string[], locale: string): string {
  return new Intl.ListFormat(locale, { type: 'conjunction' }).format(items);
}

/**
 * “one, two, three”: facts that stand side by side. Intl puts an “and” between them in German, and all
 * our languages have the comma.
 */
export function plainList(items: readonly string[]): string {
  return items.join(', ');
}

/**
 * A name that begins a line, as it is written within a sentence: nouns keep their capital in German.
 *
 * @param locale - BCP 47 tag
 */
export function withinSentence(name: string, locale: string): string {
  return /^de\b/.test(locale) ? name : name.charAt(0).toLocaleLowerCase(locale) + name.slice(1);
}
