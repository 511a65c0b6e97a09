import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FieldSentences } from '../subject/field.ts';

/** Kinds of values as JSON names them; others stand as they are. */
const kinds: Readonly<Record<string, string>> = {
  string: 'Text',
  number: 'eine Zahl',
  int: 'eine ganze Zahl',
  boolean: 'ja oder nein',
  array: 'eine Liste',
  object: 'mehrere Felder',
  record: 'mehrere Felder',
  null: 'nichts',
};

const inRequest =
  (where: string) =>
  (
    { faults }: FieldSentences['in-request/body'],
    _speak: Speaker,
    say: (inner: Inner) => string,
  ): string =>
    `${where}: ${faults.map(say).join('; ')}.`;

export const field: Phrases<FieldSentences> = {
  'field-fault/missing': () => 'muss angegeben sein',
  'field-fault/wrong-kind': ({ expected }) => `muss sein: ${kinds[expected] ?? expected}`,
  'field-fault/not-among': ({ options }, speak) => `muss eines sein von ${speak.list(options)}`,
  'field-fault/too-small': ({ minimum }, speak) => `muss mindestens ${speak.number(minimum)} sein`,
  'field-fault/not-above': ({ minimum }, speak) => `muss mehr als ${speak.number(minimum)} sein`,
  'field-fault/too-big': ({ maximum }, speak) => `darf höchstens ${speak.number(maximum)} sein`,
  'field-fault/not-below': ({ maximum }, speak) => `muss weniger als ${speak.number(maximum)} sein`,
  'field-fault/too-short': ({ minimum }, speak) =>
    minimum === 1
      ? 'darf nicht leer sein'
      : `muss mindestens ${speak.number(minimum)} Zeichen haben`,
  'field-fault/too-long': ({ maximum }, speak) =>
    `darf höchstens ${speak.number(maximum)} Zeichen haben`,
  'field-fault/too-few': ({ minimum }, speak) =>
    minimum === 1
      ? 'muss mindestens eines nennen'
      : `muss mindestens ${speak.number(minimum)} nennen`,
  'field-fault/too-many': ({ maximum }, speak) => `darf höchstens ${speak.number(maximum)} nennen`,
  'field-fault/no-multiple': ({ divisor }, speak) =>
    `muss ein Vielfaches von ${speak.number(divisor)} sein`,
  'field-fault/no-moment': () =>
    'muss ein Zeitpunkt mit seiner Zeitzone sein, wie 2026-05-20T08:00:00Z',
  'field-fault/no-day': () => 'muss ein Tag sein, den es gibt, wie 2026-05-20',
  'field-fault/no-id': () => 'muss eine Kennung sein (eine UUID)',
  'field-fault/wrong-form': () => 'ist nicht so geschrieben, wie es sein muss',
  'field-fault/unknown-field': () => 'ein solches Feld gibt es nicht',
  'field-fault/does-not-fit': () => 'passt nicht',
  'field-fault/no-part': () => 'mindestens ein Teil muss mehr als 0 sein',
  'field-fault/left-twice': () => 'entweder lastLeftPercent oder lastLeftCm angeben',
  'field-fault/place-or-batch': () =>
    'entweder placeId oder batchId angeben, nicht beides und nicht keines',
  'field-fault/without-batch': () => 'muss angegeben sein, wo keine Partie genannt ist',
  'field-fault/no-time-zone': () => 'muss eine Zeitzone sein, wie Europe/Stockholm',
  'field-fault/must-rise': ({ names }, speak) =>
    `diese müssen in dieser Reihenfolge steigen: ${speak.list(names)}`,
  'in-request/body': inRequest('Im Inhalt der Anfrage'),
  'in-request/query': inRequest('In den Abfrageparametern'),
  'in-request/params': inRequest('In der Adresse'),
  'in-request/headers': inRequest('In den Kopfzeilen'),
  'field-at': ({ pointer, fault }, _speak, say) =>
    pointer === '' ? say(fault) : `${pointer}: ${say(fault)}`,
};
