import type { ahead as English } from '../en/ahead.ts';
import { phrase } from '../phrase.ts';
import { plural } from '../plural.ts';
import { spreadIn } from '../spread.ts';

const on = spreadIn({
  notWithinAYear: 'nicht binnen eines Jahres',
  perhaps: (early) => phrase`vielleicht ${early}, ebenso leicht erst nach mehr als einem Jahr`,
  oneDay: (day) => phrase`am ${day}`,
  about: (likely, early, late) => phrase`etwa ${likely} (früh ${early}, spät ${late})`,
});

const compared = (ways: number) =>
  plural('de', ways, {
    one: '# Reihenfolge wurde verglichen',
    other: '# Reihenfolgen wurden verglichen',
  });

export const ahead: typeof English = {
  title: 'Ausblick',
  anotherPlace: 'ein anderer Platz',
  nothingWaits:
    'Nichts steht an: Keine Partie hat noch einen Anstrich vor sich. Eine Partie anfangen oder unten nach Brettern fragen, die noch geliefert werden.',
  allDone: (boards, spread) =>
    phrase`${plural('de', boards, { one: 'Das eine Brett ist', other: 'Alle # Bretter sind' })} fertig: ${on(spread)}.`,
  batchDone: (spread) => phrase`Fertig: ${on(spread)}`,
  boardsInPart: (boards, part, of) => `${boards}, Teil ${part} von ${of}`,
  askedAbout: 'Die Bretter, nach denen Sie fragten',
  putUp: 'Anbringen',
  stepAt: (job, place) => `${job}, ${place}`,
  order: {
    none: (ways) =>
      `Die Partien stehen in der Reihenfolge, in der sie an der Reihe sind. ${compared(ways)}; keine andere wäre einen halben Tag früher fertig.`,
    gap: (ways, days) =>
      `Die Partien stehen in der Reihenfolge, in der sie an der Reihe sind. ${compared(ways)}; keine kann mehr als ${plural('de', days, { one: '# Tag', other: '# Tage' })} früher fertig sein als diese.`,
  },
  ask: {
    title: 'Und wie viele noch?',
    label: 'Weitere Bretter, wie die der neuesten Partie',
    unit: 'Bretter',
    hint: 'Durch Fragen wird nichts eingetragen.',
    fault: (least, most) => `Eine ganze Zahl von Brettern, ${least} bis ${most}, oder nichts.`,
    button: 'Wann wären sie fertig?',
  },
  winter: {
    title: 'Vor dem Winter',
    noCoat: 'Kein Anstrich steht an.',
    by: (date) =>
      `Anfangen bis ${date}: Dann ist auch ein langsamer Anstrich vor der Kälte gehärtet.`,
    notThisYear:
      'Nicht mehr dieses Jahr: Selbst jetzt angefangen, würde ein langsamer Anstrich nicht vor der Kälte härten. Auf das Frühjahr warten.',
    noLimit: 'Kein letzter Tag: Dort bleibt es das ganze Jahr warm genug.',
    cannotTell:
      'Lässt sich nicht sagen: Für diese Jahreszeit dort gibt es keine Aufzeichnung, und Monatsmittel wurden nicht eingegeben.',
    coatAt: (coat, place) => `${coat} – ${place}`,
    coatOf: (coat, batches) => `${coat}: ${batches}`,
    askedAbout: 'die Bretter, nach denen Sie fragten',
  },
  table: {
    title: 'Arbeit für Arbeit',
    job: 'Arbeit',
    where: 'Wo',
    likely: 'Wahrscheinlich',
    early: 'Früh',
    late: 'Spät',
  },
  follow: {
    title: 'Im Kalender des Telefons',
    how: (link, address) => [
      'Mit seiner Adresse lässt sich ',
      link,
      ' abonnieren; er bleibt aktuell, solange das Telefon in diesem Netz ist: ',
      address,
    ],
    link: 'dieser Kalender',
  },
  seasons: 'Was aus den bisherigen Anstrichen wurde: die Jahreszeiten',
  restsOn: 'Worauf das beruht',
};
