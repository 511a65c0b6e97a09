import type { topics as English } from '../en/topics.ts';
import { plural } from '../plural.ts';

export const topics: typeof English = {
  title: 'Ämnen',
  about:
    'Givare som använder de vanliga ämnena förstås som de är. För alla andra enheter säger en regel vilka ämnen som är deras och vad deras meddelanden innehåller.',
  foundTitle: 'Hittat, inte känt än',
  rulesTitle: 'Regler',
  newRule: 'En ny regel',
  changeRule: 'Ändra en regel',
  writeNew: 'Skriv en ny regel',
  leaveAsItWas: 'Låt den vara som den var',
  found: {
    none: 'Inga just nu. Vad en enhet än skickar till MQTT-servern dyker upp här, på vilket ämne som helst, bara det finns ett tal i det.',
    noneOthers: (others) =>
      `Inga just nu. Vad en enhet än skickar till MQTT-servern dyker upp här, på vilket ämne som helst, bara det finns ett tal i det. ${plural(
        'sv',
        others,
        {
          one: `${others} ämne hördes utan tal.`,
          other: `${others} ämnen hördes utan tal.`,
        },
      )}`,
    more: (count) =>
      plural('sv', count, { one: `${count} ämne till`, other: `${count} ämnen till` }),
    leftOut: (messages) =>
      plural('sv', messages, {
        one: `${messages} meddelande på ytterligare ämnen granskades inte: det finns plats för ett visst antal ämnen (discovery.maxTopics i inställningarna).`,
        other: `${messages} meddelanden på ytterligare ämnen granskades inte: det finns plats för ett visst antal ämnen (discovery.maxTopics i inställningarna).`,
      }),
    onRequest: 'Okända ämnen på den andra MQTT-servern avlyssnas på begäran, i tio minuter.',
    listeningUntil: (until) => `Lyssnar på alla ämnen till ${until}.`,
    listen: 'Lyssna i tio minuter',
    stopListening: 'Sluta lyssna',
    heard: (ago, messages) => (messages > 1 ? `${ago}, ${messages} meddelanden` : ago),
    heardKept: (ago, messages) =>
      messages > 1
        ? `sparat av MQTT-servern, hört ${ago}, ${messages} meddelanden`
        : `sparat av MQTT-servern, hört ${ago}`,
    whatIs: (shown) => `Vad ${shown} är`,
    whatIsAt: (shown, pointer) => `Vad ${shown} vid ${pointer} är`,
    looksLike: (reading) => `ser ut som ${reading}`,
    notUsed: 'används inte',
    choose: 'välj',
    whereHangs: (sensor) => `Var ${sensor} hänger`,
    nowhereYet: 'ingenstans än',
    takeIn: 'Ta in den',
    taken: (sensor) => `${sensor} är en givare från och med nästa meddelande.`,
    takenAt: (sensor, place) => `${sensor} hänger på ${place}; dess nästa meddelande räknas.`,
    writeRule: 'Skriv en regel för det i stället',
    writeRuleMore: (more) =>
      plural('sv', more, {
        one: `Skriv en regel för det i stället (${more} tal till i det)`,
        other: `Skriv en regel för det i stället (${more} tal till i det)`,
      }),
  },
  payloads: { text: 'Ett tal som text', json: 'JSON', senml: 'SenML' },
  list: {
    none: 'Inga än. Givare på de vanliga ämnena behöver ingen.',
    brings: (payload, quantities) => `${payload}: ${quantities}`,
    ofSensor: (sensor) => ['från ', sensor],
    hiddenBy: (other) => [
      'Den får ingenting: regeln för ',
      other,
      ' kommer först och tar alla dess ämnen.',
    ],
    change: 'Ändra den',
    takeAway: 'Ta bort den',
    gone: (pattern) => `Regeln för ${pattern} är borttagen; dess mätvärden finns kvar.`,
  },
  editor: {
    pattern: 'Ämnen',
    patternHint: '{sensor} namnger en nivå, + är vilken nivå som helst, # är allt som återstår',
    sensor: 'Givarens namn',
    sensorHint: 'text, delar som {sensor}, och i JSON ställen som {/id}',
    payload: 'Hur ett meddelande ser ut',
    oneMore: 'En storhet till',
    timeFrom: 'Var dess tid står',
    timeFromHint: 'som /time; lämna tomt om det inte finns någon',
    timeFormat: 'Hur tiden skrivs',
    timeFormats: {
      any: 'känns igen av sig själv',
      iso: 'ISO 8601',
      'epoch-s': 'sekunder sedan 1970',
      'epoch-ms': 'millisekunder sedan 1970',
      'age-s': 'sekunder sedan mätningen',
      'age-ms': 'millisekunder sedan mätningen',
    },
    whereHeardHang: 'Var givarna som hörts hittills hänger',
    nowhereYet: 'ingenstans än',
    save: 'Spara regeln',
    saveChange: 'Spara ändringen',
    saved: (pattern) => `Regeln för ${pattern} gäller från och med nu.`,
  },
  value: {
    first: 'Vad det ger',
    further: 'Och',
    quantity: 'Storhet',
    pointer: 'Var det står',
    pointerHint: 'som /data/temp, eller /0/t i en lista',
    name: 'Slutet av dess namn',
    nameHint: 'det som kommer efter sista / : eller .',
    unit: 'Dess enhet',
    fraction: 'andel av ett',
    times: 'Gånger',
    timesHint: '0,1 för tiondelar',
    otherSensor: 'En annan givare',
    otherSensorHint: 'om ett meddelande har flera',
    leaveOut: (quantity) => `Utelämna ${quantity}`,
  },
  trial: {
    title: 'Vad den skulle göra av de senaste meddelandena',
    nothingYet: 'Inget prövat än.',
    noTopic: 'Inget meddelande har kommit än som den här regeln skulle ta.',
    wouldTake: (count) =>
      plural('sv', count, {
        one: 'Den skulle ta ett ämne som hörts.',
        other: `Den skulle ta ${count} ämnen som hörts.`,
      }),
    othersTake: (count) =>
      plural('sv', count, {
        one: `Andra regler tar ${count} till som passar.`,
        other: `Andra regler tar ${count} till som passar.`,
      }),
    message: 'Det här meddelandet',
    become: 'skulle bli',
    reading: (reading, quantity, sensor) => [reading, ` ${quantity} från ${sensor}`],
    readingAt: (reading, quantity, sensor, at) => [
      reading,
      ` ${quantity} från ${sensor}, uppmätt ${at}`,
    ],
  },
};
