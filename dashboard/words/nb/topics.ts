import type { topics as English } from '../en/topics.ts';
import { plural } from '../plural.ts';

export const topics: typeof English = {
  title: 'Emner',
  about:
    'Sensorer som bruker de vanlige emnene, forstås som de er. For alle andre enheter sier en regel hvilke emner som er deres, og hva meldingene inneholder.',
  foundTitle: 'Funnet, ikke kjent ennå',
  rulesTitle: 'Regler',
  newRule: 'En ny regel',
  changeRule: 'Endre en regel',
  writeNew: 'Skriv en ny regel',
  leaveAsItWas: 'La den være som den var',
  found: {
    none: 'Ingen akkurat nå. Hva en enhet enn sender til MQTT-tjeneren, dukker opp her, på hvilket emne som helst, så lenge det er et tall i det.',
    noneOthers: (others) =>
      `Ingen akkurat nå. Hva en enhet enn sender til MQTT-tjeneren, dukker opp her, på hvilket emne som helst, så lenge det er et tall i det. ${plural(
        'nb',
        others,
        {
          one: `${others} emne ble hørt uten.`,
          other: `${others} emner ble hørt uten.`,
        },
      )}`,
    more: (count) => plural('nb', count, { one: `${count} emne til`, other: `${count} emner til` }),
    leftOut: (messages) =>
      plural('nb', messages, {
        one: `${messages} melding på flere emner ble ikke sett på: det er plass til et visst antall emner (discovery.maxTopics i innstillingene).`,
        other: `${messages} meldinger på flere emner ble ikke sett på: det er plass til et visst antall emner (discovery.maxTopics i innstillingene).`,
      }),
    onRequest:
      'Ukjente emner hos den andre MQTT-tjeneren lyttes det til på forespørsel, i ti minutter.',
    listeningUntil: (until) => `Lytter til alle emner til ${until}.`,
    listen: 'Lytt i ti minutter',
    stopListening: 'Slutt å lytte',
    heard: (ago, messages) => (messages > 1 ? `${ago}, ${messages} meldinger` : ago),
    heardKept: (ago, messages) =>
      messages > 1
        ? `tatt vare på av MQTT-tjeneren, hørt ${ago}, ${messages} meldinger`
        : `tatt vare på av MQTT-tjeneren, hørt ${ago}`,
    whatIs: (shown) => `Hva ${shown} er`,
    whatIsAt: (shown, pointer) => `Hva ${shown} ved ${pointer} er`,
    looksLike: (reading) => `ligner ${reading}`,
    notUsed: 'ikke brukt',
    choose: 'velg',
    whereHangs: (sensor) => `Hvor ${sensor} henger`,
    nowhereYet: 'ingen steder ennå',
    takeIn: 'Ta den inn',
    taken: (sensor) => `${sensor} er en sensor fra neste melding av.`,
    takenAt: (sensor, place) => `${sensor} henger på ${place}; neste melding teller.`,
    writeRule: 'Skriv en regel for det i stedet',
    writeRuleMore: (more) =>
      plural('nb', more, {
        one: `Skriv en regel for det i stedet (${more} tall til i det)`,
        other: `Skriv en regel for det i stedet (${more} tall til i det)`,
      }),
  },
  payloads: { text: 'Et tall som tekst', json: 'JSON', senml: 'SenML' },
  list: {
    none: 'Ingen ennå. Sensorer på de vanlige emnene trenger ingen.',
    brings: (payload, quantities) => `${payload}: ${quantities}`,
    ofSensor: (sensor) => ['fra ', sensor],
    hiddenBy: (other) => [
      'Den får ingenting: regelen for ',
      other,
      ' kommer først og tar alle emnene dens.',
    ],
    change: 'Endre den',
    takeAway: 'Fjern den',
    gone: (pattern) => `Regelen for ${pattern} er fjernet; målingene blir værende.`,
  },
  editor: {
    pattern: 'Emner',
    patternHint:
      '{sensor} gir navn til et nivå, + er hvilket nivå som helst, # er alt som er igjen',
    sensor: 'Navnet på sensoren',
    sensorHint: 'tekst, deler som {sensor}, og i JSON steder som {/id}',
    payload: 'Hvordan en melding ser ut',
    oneMore: 'En størrelse til',
    timeFrom: 'Hvor tiden står',
    timeFromHint: 'som /time; la det stå tomt om det ikke finnes noen',
    timeFormat: 'Hvordan tiden skrives',
    timeFormats: {
      any: 'kjennes igjen av seg selv',
      iso: 'ISO 8601',
      'epoch-s': 'sekunder siden 1970',
      'epoch-ms': 'millisekunder siden 1970',
      'age-s': 'sekunder siden målingen',
      'age-ms': 'millisekunder siden målingen',
    },
    whereHeardHang: 'Hvor sensorene som er hørt så langt, henger',
    nowhereYet: 'ingen steder ennå',
    save: 'Lagre regelen',
    saveChange: 'Lagre endringen',
    saved: (pattern) => `Regelen for ${pattern} gjelder fra nå av.`,
  },
  value: {
    first: 'Hva den gir',
    further: 'Og',
    quantity: 'Størrelse',
    pointer: 'Hvor den står',
    pointerHint: 'som /data/temp, eller /0/t i en liste',
    name: 'Slutten av navnet',
    nameHint: 'det som kommer etter siste / : eller .',
    unit: 'Enheten',
    fraction: 'andel av én',
    times: 'Ganger',
    timesHint: '0,1 for tideler',
    otherSensor: 'En annen sensor',
    otherSensorHint: 'om en melding har flere',
    leaveOut: (quantity) => `Utelat ${quantity}`,
  },
  trial: {
    title: 'Hva den ville gjøre av de siste meldingene',
    nothingYet: 'Ingenting prøvd ennå.',
    noTopic: 'Det har ikke kommet noen melding ennå som denne regelen ville ta.',
    wouldTake: (count) =>
      plural('nb', count, {
        one: 'Den ville ta ett emne som er hørt.',
        other: `Den ville ta ${count} emner som er hørt.`,
      }),
    othersTake: (count) =>
      plural('nb', count, {
        one: `Andre regler tar ${count} til som passer.`,
        other: `Andre regler tar ${count} til som passer.`,
      }),
    message: 'Denne meldingen',
    become: 'ville bli',
    reading: (reading, quantity, sensor) => [reading, ` ${quantity} fra ${sensor}`],
    readingAt: (reading, quantity, sensor, at) => [
      reading,
      ` ${quantity} fra ${sensor}, målt ${at}`,
    ],
  },
};
