import type { apiPage as English } from '../en/api-page.ts';

export const apiPage: typeof English = {
  title: 'För program',
  about: (stream, description) => [
    'Det som sidorna här visar kan andra program läsa och skriva på samma sätt. JSON, tider enligt ISO 8601 i UTC, temperaturer i °C. Ändringar kommer direkt som server-sent events från ',
    stream,
    '. Hela beskrivningen: ',
    description,
  ],
  field: 'Fält',
  type: 'Typ',
  aboutField: 'Om',
  optional: (name) => [name, ' (kan utelämnas)'],
  inThe: (name, where) => `${name} (i ${where})`,
  either: (types) => types.join(' eller '),
  listOf: (type) => `lista av ${type}`,
  listOfAnything: 'lista av värden',
};
