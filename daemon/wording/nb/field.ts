import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FieldSentences } from '../subject/field.ts';

/** Kinds of values as JSON names them; others stand as they are. */
const kinds: Readonly<Record<string, string>> = {
  string: 'tekst',
  number: 'et tall',
  int: 'et heltall',
  boolean: 'ja eller nei',
  array: 'en liste',
  object: 'flere felter',
  record: 'flere felter',
  null: 'ingenting',
};

const inRequest =
  (where: string) =>
  (
    { faults }: FieldSentences['in-request/body'],
    _speak: Speaker,
    say: (inner: Inner) => string,
  ): string =>
    `I ${where}: ${faults.map(say).join('; ')}.`;

export const field: Phrases<FieldSentences> = {
  'field-fault/missing': () => 'må oppgis',
  'field-fault/wrong-kind': ({ expected }) => `må være ${kinds[expected] ?? expected}`,
  'field-fault/not-among': ({ options }, speak) => `må være en av ${speak.list(options)}`,
  'field-fault/too-small': ({ minimum }, speak) => `må være minst ${speak.number(minimum)}`,
  'field-fault/not-above': ({ minimum }, speak) => `må være mer enn ${speak.number(minimum)}`,
  'field-fault/too-big': ({ maximum }, speak) => `kan være høyst ${speak.number(maximum)}`,
  'field-fault/not-below': ({ maximum }, speak) => `må være mindre enn ${speak.number(maximum)}`,
  'field-fault/too-short': ({ minimum }, speak) =>
    minimum === 1 ? 'kan ikke være tomt' : `må ha minst ${speak.number(minimum)} tegn`,
  'field-fault/too-long': ({ maximum }, speak) => `kan ha høyst ${speak.number(maximum)} tegn`,
  'field-fault/too-few': ({ minimum }, speak) =>
    minimum === 1 ? 'må oppgi minst én' : `må oppgi minst ${speak.number(minimum)}`,
  'field-fault/too-many': ({ maximum }, speak) => `kan oppgi høyst ${speak.number(maximum)}`,
  'field-fault/no-multiple': ({ divisor }, speak) =>
    `må være et multiplum av ${speak.number(divisor)}`,
  'field-fault/no-moment': () => 'må være et tidspunkt med tidssone, som 2026-05-20T08:00:00Z',
  'field-fault/no-day': () => 'må være en dag som finnes, som 2026-05-20',
  'field-fault/no-id': () => 'må være en id (en UUID)',
  'field-fault/wrong-form': () => 'er ikke skrevet slik det må være',
  'field-fault/unknown-field': () => 'det finnes ikke noe slikt felt',
  'field-fault/does-not-fit': () => 'passer ikke',
  'field-fault/no-part': () => 'minst én del må være mer enn 0',
  'field-fault/left-twice': () => 'oppgi enten lastLeftPercent eller lastLeftCm',
  'field-fault/place-or-batch': () =>
    'oppgi enten placeId eller batchId, ikke begge og ikke ingen av dem',
  'field-fault/without-batch': () => 'må oppgis når ikke noe parti er nevnt',
  'field-fault/no-time-zone': () => 'må være en tidssone som Europe/Stockholm',
  'field-fault/must-rise': ({ names }, speak) =>
    `disse må stige i denne rekkefølgen: ${speak.list(names)}`,
  'in-request/body': inRequest('innholdet'),
  'in-request/query': inRequest('spørringen'),
  'in-request/params': inRequest('adressen'),
  'in-request/headers': inRequest('hodefeltene'),
  'field-at': ({ pointer, fault }, _speak, say) =>
    pointer === '' ? say(fault) : `${pointer}: ${say(fault)}`,
};
