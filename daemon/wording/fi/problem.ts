import type { Phrases } from '../phrase.ts';
import type { ProblemSentences } from '../subject/problem.ts';

export const problem: Phrases<ProblemSentences> = {
  'problem-title/BC_REQUEST_INVALID': () => 'Pyynnössä on kenttä, joka ei sovi',
  'problem-to-do/BC_REQUEST_INVALID': () => 'Korjaa luetellut kentät ja lähetä uudelleen.',
  'problem-title/BC_REQUEST_UNREADABLE': () => 'Pyyntöä ei voitu lukea',
  'problem-to-do/BC_REQUEST_UNREADABLE': () =>
    'Lähetä JSONia otsakkeella content-type: application/json.',
  'problem-title/BC_REQUEST_TOO_LARGE': () => 'Pyyntö on liian suuri',
  'problem-to-do/BC_REQUEST_TOO_LARGE': () => 'Lähetä enintään 1 MB kerralla.',
  'problem-title/BC_ROUTE_UNKNOWN': () => 'Tässä osoitteessa ei ole mitään',
  'problem-to-do/BC_ROUTE_UNKNOWN': () =>
    'Olemassa olevat osoitteet ovat tiedostossa /api/v1/openapi.json.',
  'problem-title/BC_THING_UNKNOWN': () => 'Sellaista ei täällä ole',
  'problem-to-do/BC_THING_UNKNOWN': () =>
    'Tarkista tunnus; olemassa olevat saa luetelluksi kokoelman GET-pyynnöllä.',
  'problem-title/BC_REFERENCE_UNKNOWN': () => 'Kenttä viittaa johonkin, mitä ei ole',
  'problem-to-do/BC_REFERENCE_UNKNOWN': () => 'Luo se ensin, tai käytä olemassa olevan tunnusta.',
  'problem-title/BC_STATE_CONFLICT': () => 'Tämä ei sovi jo kirjattuun',
  'problem-to-do/BC_STATE_CONFLICT': () => 'Katso, mitä on kirjattu, ja lähetä korjattu pyyntö.',
  'problem-title/BC_MERGE_UNLIKE': () => 'Näitä lautoja ei voi yhdistää',
  'problem-to-do/BC_MERGE_UNLIKE': () =>
    'Pidä ne kahtena eränä, tai yhdistä vain laudat, joilla on sama puu, suunnitelma ja kerrokset.',
  'problem-title/BC_SPLIT_TOO_MANY': () => 'Erotettavia lautoja ei ole niin montaa',
  'problem-to-do/BC_SPLIT_TOO_MANY': () =>
    'Anna vähemmän lautoja; jos kaikki lähtivät, kirjaa sen sijaan siirto.',
  'problem-title/BC_ID_TAKEN': () => 'Tämä tunnus on jo muun käytössä',
  'problem-to-do/BC_ID_TAKEN': () => 'Lähetä uudella tunnuksella.',
  'problem-title/BC_WRITE_NOT_ALLOWED': () =>
    'Muutoksia otetaan vastaan vain tietokoneelta itseltään',
  'problem-to-do/BC_WRITE_NOT_ALLOWED': () =>
    'Avaa sivu taustaohjelman tietokoneella osoitteessa http://localhost, tai valitse PIN-koodi siellä, tai täällä käyttöönottokoodilla, jonka taustaohjelma tulosti käynnistyessään.',
  'problem-title/BC_LOGIN_NEEDED': () => 'Tähän pitää kirjautua',
  'problem-to-do/BC_LOGIN_NEEDED': () => 'Kirjaudu PIN-koodilla ja lähetä sitten uudelleen.',
  'problem-title/BC_ROLE_TOO_SMALL': () => 'Tämä laite ei saa tehdä tätä',
  'problem-to-do/BC_ROLE_TOO_SMALL': () => 'Kirjaudu PIN-koodilla, jolla saa.',
  'problem-title/BC_PIN_WRONG': () => 'PIN-koodi tai koodi ei ole oikein',
  'problem-to-do/BC_PIN_WRONG': () =>
    'Yritä uudelleen; PIN-koodin unohtanut asettaa uuden tietokoneella itsellään komennolla: boardcure pin.',
  'problem-title/BC_TRIES_EXHAUSTED': () =>
    'Tältä laitteelta tuli liian monta väärää PIN-koodia tai koodia',
  'problem-to-do/BC_TRIES_EXHAUSTED': () =>
    'Odota ilmoitettu aika, tai käytä kirjautunutta laitetta, tai aseta uusi PIN-koodi tietokoneella itsellään komennolla: boardcure pin.',
  'problem-title/BC_REQUEST_FOREIGN': () => 'Pyyntö tuli toisen sivuston sivulta',
  'problem-to-do/BC_REQUEST_FOREIGN': () =>
    'Käytä tämän taustaohjelman sivua; ohjelma lähettää otsakkeen x-boardcure-request millä tahansa arvolla.',
  'problem-title/BC_HOST_UNKNOWN': () => 'Taustaohjelmaa ei tunneta tällä nimellä',
  'problem-to-do/BC_HOST_UNKNOWN': () =>
    'Käytä sen IP-osoitetta tai tietokoneen nimeä, tai lisää nimi asetukseen http.names.',
  'problem-title/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Välittäjän sulkeminen vaientaisi jotain käytössä olevaa',
  'problem-to-do/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Tee jokaiselle nimi ja salasana ja vie ne laitteisiin, tai lähetä ne, jotka saavat vaieta, kentässä silence.',
  'problem-title/BC_TOO_MANY_REQUESTS': () => 'Tältä laitteelta tulee liian monta pyyntöä',
  'problem-to-do/BC_TOO_MANY_REQUESTS': () =>
    'Odota minuutti, tai suurenna asetusta http.maxRequestsPerMinute.',
  'problem-title/BC_TOO_MANY_STREAMS': () => 'Liian monta sivua kuuntelee jo',
  'problem-to-do/BC_TOO_MANY_STREAMS': () =>
    'Odota, kunnes jokin muu sivu suljetaan, tai suurenna asetusta http.maxStreams.',
  'problem-title/BC_SETTING_FIXED': () => 'Tätä asetusta ei muuteta sivulla',
  'problem-to-do/BC_SETTING_FIXED': () =>
    'Aseta se tietokoneella olevassa asetustiedostossa tai poista valitsin tai muuttuja, joka sen antaa, ja käynnistä taustaohjelma uudelleen.',
  'problem-title/BC_STORE_FULL': () => 'Levy on täynnä',
  'problem-to-do/BC_STORE_FULL': () => 'Vapauta levytilaa; tallennus jatkuu itsestään.',
  'problem-title/BC_INTERNAL': () => 'Taustaohjelmassa meni jotain vikaan',
  'problem-to-do/BC_INTERNAL': () => 'Yritä uudelleen; jos se toistuu, katso taustaohjelman lokia.',
};
