import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FieldSentences } from '../subject/field.ts';

/** Kinds of values as JSON names them; others stand as they are. */
const kinds: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'ett tal',
  int: 'ett heltal',
  boolean: 'ja eller nej',
  array: 'en lista',
  object: 'flera fält',
  record: 'flera fält',
  null: 'inget',
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
  'field-fault/missing': () => 'måste anges',
  'field-fault/wrong-kind': ({ expected }) => `måste vara ${kinds[expected] ?? expected}`,
  'field-fault/not-among': ({ options }, speak) => `måste vara något av ${speak.list(options)}`,
  'field-fault/too-small': ({ minimum }, speak) => `måste vara minst ${speak.number(minimum)}`,
  'field-fault/not-above': ({ minimum }, speak) => `måste vara mer än ${speak.number(minimum)}`,
  'field-fault/too-big': ({ maximum }, speak) => `får vara högst ${speak.number(maximum)}`,
  'field-fault/not-below': ({ maximum }, speak) => `måste vara mindre än ${speak.number(maximum)}`,
  'field-fault/too-short': ({ minimum }, speak) =>
    minimum === 1 ? 'får inte vara tomt' : `måste ha minst ${speak.number(minimum)} tecken`,
  'field-fault/too-long': ({ maximum }, speak) => `får ha högst ${speak.number(maximum)} tecken`,
  'field-fault/too-few': ({ minimum }, speak) =>
    minimum === 1 ? 'måste ange minst en' : `måste ange minst ${speak.number(minimum)}`,
  'field-fault/too-many': ({ maximum }, speak) => `får ange högst ${speak.number(maximum)}`,
  'field-fault/no-multiple': ({ divisor }, speak) =>
    `måste vara en multipel av ${speak.number(divisor)}`,
  'field-fault/no-moment': () => 'måste vara en tidpunkt med tidszon, som 2026-05-20T08:00:00Z',
  'field-fault/no-day': () => 'måste vara en dag som finns, som 2026-05-20',
  'field-fault/no-id': () => 'måste vara ett id (en UUID)',
  'field-fault/wrong-form': () => 'är inte skrivet så som det ska vara',
  'field-fault/unknown-field': () => 'det finns inget sådant fält',
  'field-fault/does-not-fit': () => 'passar inte',
  'field-fault/no-part': () => 'minst en del måste vara mer än 0',
  'field-fault/left-twice': () => 'ange antingen lastLeftPercent eller lastLeftCm',
  'field-fault/place-or-batch': () =>
    'ange antingen placeId eller batchId, inte båda och inte inget',
  'field-fault/without-batch': () => 'måste anges när inget parti är nämnt',
  'field-fault/no-time-zone': () => 'måste vara en tidszon som Europe/Stockholm',
  'field-fault/must-rise': ({ names }, speak) =>
    `dessa måste stiga i den här ordningen: ${speak.list(names)}`,
  'in-request/body': inRequest('begärans innehåll'),
  'in-request/query': inRequest('frågan'),
  'in-request/params': inRequest('adressen'),
  'in-request/headers': inRequest('huvudena'),
  'field-at': ({ pointer, fault }, _speak, say) =>
    pointer === '' ? say(fault) : `${pointer}: ${say(fault)}`,
};
