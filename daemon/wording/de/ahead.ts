import type { Phrases } from '../phrase.ts';
import type { AheadSentences } from '../subject/ahead.ts';

export const ahead: Phrases<AheadSentences> = {
  'rate-outlook': () =>
    'Die kommenden Tage sind aus dem Gemessenen fortgeschrieben, mit einer Wettervorhersage, wo eine gesendet wurde.',
  'rate-own-record': () =>
    'Spätere Tage sind derselben Zeit früherer Jahre aus den Aufzeichnungen dieses Orts entnommen.',
  'rate-typed-months': () =>
    'Spätere Tage im Freien sind den Monatsmitteln in den Einstellungen entnommen.',
  'rate-last-days': () =>
    'Für spätere Tage wird angenommen, dass es wie in den letzten zwei Wochen weitergeht, mit wachsendem Zweifel: Diese Jahreszeit ist hier noch nicht aufgezeichnet, und Monatsmittel wurden nicht eingegeben.',
  'place-unknown': ({ placeName }) =>
    `Über die Luft ist nichts bekannt (${placeName}): Was dort geplant ist, hat keine Zeiten.`,
  'capacity-unknown': () =>
    'Nicht für jedes Gestell wurde gesagt, wie viel darauf passt; der Plan achtet deshalb nicht darauf.',
  'in-parts': () =>
    'Eine Partie, die größer ist als die Gestelle, wird in Teilen geplant, einer nach dem anderen.',
  'no-wall': () =>
    'Es ist keine Hauswand angelegt, deshalb sind alle Anstriche auf den Gestellen geplant.',
  pace: ({ brushedM2, mountedBoards }, speak) =>
    `Angenommen wird, dass je Stunde ${speak.area(brushedM2)} gestrichen und ${speak.number(mountedBoards)} Bretter angebracht werden, eines nach dem anderen (übliche Praxis, ohne Quelle; Einstellungen).`,
  paint: () =>
    'Früh und spät enthalten den Zweifel über Farbe und Wetter; Pannen, Regen und Besuch sind nicht darin.',
};
