import type { apiPage as English } from '../en/api-page.ts';

export const apiPage: typeof English = {
  title: 'Ohjelmille',
  about: (stream, description) => [
    'Mitä nämä sivut näyttävät, sen muutkin ohjelmat voivat lukea ja kirjoittaa samalla tavalla. JSON, ajat ISO 8601 -muodossa UTC-ajassa, lämpötilat °C. Muutokset tulevat heti palvelimen lähettäminä tapahtumina (server-sent events) osoitteesta ',
    stream,
    '. Koko kuvaus: ',
    description,
  ],
  field: 'Kenttä',
  type: 'Tyyppi',
  aboutField: 'Selitys',
  optional: (name) => [name, ' (voi jättää pois)'],
  inThe: (name, where) => `${name} (kohdassa ${where})`,
  either: (types) => types.join(' tai '),
  listOf: (type) => `luettelo: ${type}`,
  listOfAnything: 'luettelo arvoja',
};
