import type { wall as English } from '../en/wall.ts';
import { plural } from '../plural.ts';

export const wall: typeof English = {
  title: 'Väggen',
  coatsPlanned: (coats) =>
    plural('sv', coats, { one: '# strykning planerad', other: '# strykningar planerade' }),
  coatOf: (coat, coats) => `strykning ${coat} av ${coats}`,
  spoken: (sign, job) => `${sign} ${job}`,
  spokenOld: (verdict) => `Gäller kanske inte längre: ${verdict}`,
  notSure: 'Vet inte längre',
  air: (word) => `Luft: ${word}`,
  airOld: (word, ago) => `Luft: ${word}, ${ago}`,
  noSensor: 'Ingen givare berättar hur luften är här.',
  oldFigures: (ago) => `Gamla siffror: det senaste mätvärdet kom ${ago}.`,
  driedUnknown: 'Hur långt färgen har torkat är inte känt.',
  dried: (share, job) => `Färgen har torkat ${share} av vad som troligen behövs för ${job}.`,
  pages: 'Väggens sidor',
  pageOf: (page, pages) => `${page} av ${pages}`,
  next: 'Nästa ställ',
  back: 'Föregående ställ',
  standStill: 'Stå still',
  turnOn: 'Bläddra av sig själv',
  also: (racks) => `Även: ${racks}`,
  rackSays: (rack, sign) => `${rack} – ${sign}`,
  needsLook: 'Behöver ses till',
  moreRacks: (racks) => `${racks} till`,
  moreNotices: (notices) => `och ${notices} till`,
};
