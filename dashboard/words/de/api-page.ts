import type { apiPage as English } from '../en/api-page.ts';

export const apiPage: typeof English = {
  title: 'Für Programme',
  about: (stream, description) => [
    'Was diese Seiten zeigen, können andere Programme auf demselben Weg lesen und schreiben. JSON, Zeiten nach ISO 8601 in UTC, Temperaturen in °C. Laufende Änderungen kommen als Server-Sent Events von ',
    stream,
    '. Die ganze Beschreibung: ',
    description,
  ],
  field: 'Feld',
  type: 'Typ',
  aboutField: 'Bedeutung',
  optional: (name) => [name, ' (kann fehlen)'],
  inThe: (name, where) => `${name} (in: ${where})`,
  either: (types) => types.join(' oder '),
  listOf: (type) => `Liste von ${type}`,
  listOfAnything: 'Liste von Werten',
};
