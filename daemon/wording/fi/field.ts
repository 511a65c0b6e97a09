import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FieldSentences } from '../subject/field.ts';

/** Kinds of values as JSON names them; others stand as they are. */
const kinds: Readonly<Record<string, string>> = {
  string: 'teksti',
  number: 'luku',
  int: 'kokonaisluku',
  boolean: 'kyllä tai ei',
  array: 'luettelo',
  object: 'useita kenttiä',
  record: 'useita kenttiä',
  null: 'ei mitään',
};

const inRequest =
  (where: string) =>
  (
    { faults }: FieldSentences['in-request/body'],
    _speak: Speaker,
    say: (inner: Inner) => string,
  ): string =>
    `Kohdassa ${where}: ${faults.map(say).join('; ')}.`;

export const field: Phrases<FieldSentences> = {
  'field-fault/missing': () => 'on annettava',
  'field-fault/wrong-kind': ({ expected }) => `arvoksi käy: ${kinds[expected] ?? expected}`,
  'field-fault/not-among': ({ options }, speak) => `jokin näistä: ${speak.list(options)}`,
  'field-fault/too-small': ({ minimum }, speak) => `vähintään ${speak.number(minimum)}`,
  'field-fault/not-above': ({ minimum }, speak) => `enemmän kuin ${speak.number(minimum)}`,
  'field-fault/too-big': ({ maximum }, speak) => `enintään ${speak.number(maximum)}`,
  'field-fault/not-below': ({ maximum }, speak) => `vähemmän kuin ${speak.number(maximum)}`,
  'field-fault/too-short': ({ minimum }, speak) =>
    minimum === 1 ? 'ei saa olla tyhjä' : `vähintään ${speak.number(minimum)} merkkiä`,
  'field-fault/too-long': ({ maximum }, speak) => `enintään ${speak.number(maximum)} merkkiä`,
  'field-fault/too-few': ({ minimum }, speak) =>
    minimum === 1 ? 'nimeä vähintään yksi' : `nimeä vähintään ${speak.number(minimum)}`,
  'field-fault/too-many': ({ maximum }, speak) => `nimeä enintään ${speak.number(maximum)}`,
  'field-fault/no-multiple': ({ divisor }, speak) =>
    `pitää olla jaollinen luvulla ${speak.number(divisor)}`,
  'field-fault/no-moment': () =>
    'pitää olla ajankohta aikavyöhykkeineen, kuten 2026-05-20T08:00:00Z',
  'field-fault/no-day': () => 'pitää olla olemassa oleva päivä, kuten 2026-05-20',
  'field-fault/no-id': () => 'pitää olla tunnus (UUID)',
  'field-fault/wrong-form': () => 'ei ole kirjoitettu niin kuin pitää',
  'field-fault/unknown-field': () => 'tällaista kenttää ei ole',
  'field-fault/does-not-fit': () => 'ei sovi',
  'field-fault/no-part': () => 'vähintään yhden osan pitää olla enemmän kuin 0',
  'field-fault/left-twice': () => 'anna joko lastLeftPercent tai lastLeftCm',
  'field-fault/place-or-batch': () => 'anna placeId tai batchId, tasan toinen niistä',
  'field-fault/without-batch': () => 'on annettava, kun erää ei ole nimetty',
  'field-fault/no-time-zone': () => 'pitää olla aikavyöhyke, kuten Europe/Stockholm',
  'field-fault/must-rise': ({ names }, speak) =>
    `näiden pitää nousta tässä järjestyksessä: ${speak.list(names)}`,
  'in-request/body': inRequest('body'),
  'in-request/query': inRequest('query'),
  'in-request/params': inRequest('params'),
  'in-request/headers': inRequest('headers'),
  'field-at': ({ pointer, fault }, _speak, say) =>
    pointer === '' ? say(fault) : `${pointer}: ${say(fault)}`,
};
