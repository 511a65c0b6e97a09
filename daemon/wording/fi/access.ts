import type { Phrases } from '../phrase.ts';
import type { AccessSentences } from '../subject/access.ts';

const listed = ({ names, more }: AccessSentences['sensors-would-fall-silent']): string =>
  more > 0 ? `${names.join(', ')} ja vielä ${more}` : names.join(', ');

const roles: Readonly<Record<string, string>> = {
  look: 'saa katsoa',
  operate: 'saa kirjata töitä',
  own: 'saa tehdä kaiken',
};

const uses: Readonly<Record<string, string>> = {
  node: 'anturilaite',
  listener: 'kuuntelija',
  forecaster: 'ennusteen lähettäjä',
};

export const access: Phrases<AccessSentences> = {
  'pin-too-short': () =>
    'PIN-koodi on liian lyhyt: siinä pitää olla vähintään 6 numeroa tai kirjainta.',
  'pin-repeats': () => 'PIN-koodi toistaa itseään: käytä vähintään kolmea eri merkkiä.',
  'pin-in-a-row': () => 'PIN-koodi on sarja kuten 123456: sekoita sen numerot.',
  'pin-as-the-other': () => 'Kahden PIN-koodin pitää erota toisistaan.',
  'pin-wrong': () => 'Tämä ei ole oikea PIN-koodi.',
  'pin-wrong/current': () => 'Nykyinen PIN-koodi ei ole oikein.',
  'pin-not-set': () => 'PIN-koodia ei ole vielä asetettu: kirjautua ei voi.',
  'pin-own-first': () => 'Ensin asetetaan paikan pitäjän PIN-koodi.',
  'pin-first-from-here': () =>
    'Ensimmäinen PIN-koodi asetetaan tietokoneelta itseltään tai käyttöönottokoodilla.',
  'pin-after-log-in': () => 'PIN-koodit vaihdetaan, kun on kirjauduttu PIN-koodilla.',
  'code-wrong/set-up': () => 'Tämä ei ole käyttöönottokoodi, tai se on vanhentunut.',
  'code-wrong/pairing': () => 'Tämä ei ole parituskoodi, tai se on vanhentunut.',
  'try-later': ({ seconds }) => `Seuraava yritys otetaan vastaan ${seconds} sekunnin kuluttua.`,
  'role-needed': ({ role }) => `Tähän tarvitaan oikeus: ${roles[role] ?? role}.`,
  'not-open': () => 'Tämä ei ole avoinna kaikille verkossa.',
  'not-from-here': () => 'Pyyntö ei tullut taustaohjelman omalta tietokoneelta.',
  'no-broker-name': ({ name }) => `Välittäjällä ei ole nimeä ${name}.`,
  'broker-elsewhere': () =>
    'Anturit ovat toisella välittäjällä: nimet ja salasanat asetetaan siellä.',
  'broker-name-taken': ({ name }) => `Nimi ${name} on jo annettu.`,
  'broker-names-full': ({ names }) => `Nimiä on jo ${names}.`,
  'node-without-sensor': () => 'Anturilaite julkaisee vähintään yhden anturin nimissä.',
  'other-with-sensor': ({ kind }) =>
    `Tämä laji ei julkaise minkään anturin nimissä: ${uses[kind] ?? kind}.`,
  'sensors-would-fall-silent': (told) => `Näitä ei enää kuultaisi: ${listed(told)}.`,
  'listeners-would-fall-silent': (told) =>
    `Nämä kuuntelijat eivät enää kuulisi mitään: ${listed(told)}.`,
  'too-many-pages': ({ pages }) =>
    `Kuuntelevia sivuja on jo ${pages}, niin monta kuin http.maxStreams sallii.`,
  'too-many-requests': ({ perMinute, seconds }) =>
    `Pyyntöihin vastataan enintään ${perMinute} kertaa minuutissa; seuraavaan ${seconds} sekunnin kuluttua.`,
  'asked-as': ({ host }) => `Sitä kysyttiin nimellä ”${host}”.`,
};
