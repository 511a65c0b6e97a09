import type { apiPage as English } from '../en/api-page.ts';

export const apiPage: typeof English = {
  title: 'For programmer',
  about: (stream, description) => [
    'Det sidene her viser, kan andre programmer lese og skrive på samme måte. JSON, tider etter ISO 8601 i UTC, temperaturer i °C. Endringer kommer direkte som server-sent events fra ',
    stream,
    '. Hele beskrivelsen: ',
    description,
  ],
  field: 'Felt',
  type: 'Type',
  aboutField: 'Om',
  optional: (name) => [name, ' (kan utelates)'],
  inThe: (name, where) => `${name} (i ${where})`,
  either: (types) => types.join(' eller '),
  listOf: (type) => `liste av ${type}`,
  listOfAnything: 'liste av verdier',
};
