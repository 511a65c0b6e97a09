import type { topics as English } from '../en/topics.ts';
import { plural } from '../plural.ts';

const none =
  'Ei yhtään juuri nyt. Mitä tahansa laite lähettää välittäjälle, se ilmestyy tähän aiheesta riippumatta, kunhan siinä on luku.';

export const topics: typeof English = {
  title: 'Aiheet',
  about:
    'Oletusaiheita käyttävät anturit ymmärretään sellaisenaan. Muille laitteille sääntö kertoo, mitkä aiheet ovat niiden omia ja mitä niiden viesteissä on.',
  foundTitle: 'Löytyneet, vielä tuntemattomat',
  rulesTitle: 'Säännöt',
  newRule: 'Uusi sääntö',
  changeRule: 'Muuta sääntöä',
  writeNew: 'Kirjoita uusi sääntö',
  leaveAsItWas: 'Jätä ennalleen',

  found: {
    none,
    noneOthers: (others) =>
      `${none} ${plural('fi', others, {
        one: `Ilman lukua kuultiin ${others} aihe.`,
        other: `Ilman lukua kuultiin ${others} aihetta.`,
      })}`,
    more: (count) =>
      plural('fi', count, { one: `vielä ${count} aihe`, other: `vielä ${count} aihetta` }),
    leftOut: (messages) =>
      plural('fi', messages, {
        one: `${messages} muiden aiheiden viesti jäi katsomatta: aiheita mahtuu rajallinen määrä (asetus discovery.maxTopics).`,
        other: `${messages} muiden aiheiden viestiä jäi katsomatta: aiheita mahtuu rajallinen määrä (asetus discovery.maxTopics).`,
      }),
    onRequest: 'Toisen välittäjän tuntemattomia aiheita kuunnellaan pyynnöstä, kymmenen minuuttia.',
    listeningUntil: (until) => `Kaikkia aiheita kuunnellaan, loppuu: ${until}.`,
    listen: 'Kuuntele kymmenen minuuttia',
    stopListening: 'Lopeta kuuntelu',

    heard: (ago, messages) => (messages > 1 ? `${ago}, ${messages} viestiä` : ago),
    heardKept: (ago, messages) =>
      messages > 1
        ? `välittäjän säilyttämä, kuultu ${ago}, ${messages} viestiä`
        : `välittäjän säilyttämä, kuultu ${ago}`,
    whatIs: (shown) => `Mikä ${shown} on`,
    whatIsAt: (shown, pointer) => `Mikä ${shown} on, kohdassa ${pointer}`,
    looksLike: (reading) => `näyttää tältä: ${reading}`,
    notUsed: 'ei käytössä',
    choose: 'valitse',
    whereHangs: (sensor) => `Missä ${sensor} roikkuu`,
    nowhereYet: 'ei vielä missään',
    takeIn: 'Ota mukaan',
    taken: (sensor) => `${sensor} on anturi seuraavasta viestistään alkaen.`,
    takenAt: (sensor, place) =>
      `${sensor} roikkuu, paikka: ${place}; sen seuraava viesti lasketaan.`,
    writeRule: 'Kirjoita sille sääntö',
    writeRuleMore: (more) =>
      plural('fi', more, {
        one: `Kirjoita sille sääntö (siinä on vielä ${more} luku)`,
        other: `Kirjoita sille sääntö (siinä on vielä ${more} lukua)`,
      }),
  },

  payloads: {
    text: 'Luku tekstinä',
    json: 'JSON',
    senml: 'SenML',
  },

  list: {
    none: 'Ei vielä yhtään. Oletusaiheiden anturit eivät tarvitse sääntöä.',
    brings: (payload, quantities) => `${payload}: ${quantities}`,
    ofSensor: (sensor) => ['anturi: ', sensor],
    hiddenBy: (other) => [
      'Se ei saa mitään: aiemmin on sääntö ',
      other,
      ', joka vie kaikki sen aiheet.',
    ],
    change: 'Muuta',
    takeAway: 'Poista',
    gone: (pattern) => `Sääntö ${pattern} on poistettu; sen lukemat säilyvät.`,
  },

  editor: {
    pattern: 'Aiheet',
    patternHint: '{sensor} nimeää tason, + on mikä tahansa yksi taso, # on kaikki loput',
    sensor: 'Anturin nimi',
    sensorHint: 'tekstiä, osia kuten {sensor}, ja JSONissa kohtia kuten {/id}',
    payload: 'Miltä viesti näyttää',
    oneMore: 'Yksi suure lisää',
    timeFrom: 'Missä sen aika on',
    timeFromHint: 'kuten /time; jätä tyhjäksi, jos aikaa ei ole',
    timeFormat: 'Miten aika on kirjoitettu',
    timeFormats: {
      any: 'päättele itse',
      iso: 'ISO 8601',
      'epoch-s': 'sekunteja vuodesta 1970',
      'epoch-ms': 'millisekunteja vuodesta 1970',
      'age-s': 'sekunteja sitten',
      'age-ms': 'millisekunteja sitten',
    },
    whereHeardHang: 'Missä tähän asti kuullut anturit roikkuvat',
    nowhereYet: 'ei vielä missään',
    save: 'Tallenna sääntö',
    saveChange: 'Tallenna muutos',
    saved: (pattern) => `Sääntö ${pattern} on tästä lähtien voimassa.`,
  },

  value: {
    first: 'Mitä se tuo',
    further: 'Ja',
    quantity: 'Suure',
    pointer: 'Missä se on',
    pointerHint: 'kuten /data/temp, tai luettelossa /0/t',
    name: 'Nimen loppu',
    nameHint: 'mitä tulee viimeisen merkin / : tai . jälkeen',
    unit: 'Sen yksikkö',
    fraction: 'osuus ykkösestä',
    times: 'Kerroin',
    timesHint: '0.1 kymmenesosille',
    otherSensor: 'Toinen anturi',
    otherSensorHint: 'jos yhdessä viestissä on useita',
    leaveOut: (quantity) => `Jätä pois: ${quantity}`,
  },

  trial: {
    title: 'Mitä se tekisi viimeisistä viesteistä',
    nothingYet: 'Mitään ei ole vielä kokeiltu.',
    noTopic: 'Yhtään viestiä, jonka tämä sääntö ottaisi, ei ole vielä tullut.',
    wouldTake: (count) =>
      plural('fi', count, {
        one: 'Se ottaisi yhden kuullun aiheen.',
        other: `Se ottaisi ${count} kuultua aihetta.`,
      }),
    othersTake: (count) =>
      plural('fi', count, {
        one: `Muut säännöt ottavat vielä ${count} sopivan aiheen.`,
        other: `Muut säännöt ottavat vielä ${count} sopivaa aihetta.`,
      }),
    message: 'Tästä viestistä',
    become: 'tulisi',
    reading: (reading, quantity, sensor) => [reading, ` ${quantity}, anturi ${sensor}`],
    readingAt: (reading, quantity, sensor, at) => [
      reading,
      ` ${quantity}, anturi ${sensor}, mitattu ${at}`,
    ],
  },
};
