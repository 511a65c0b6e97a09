import type { topics as English } from '../en/topics.ts';
import { plural } from '../plural.ts';

const noneFound =
  'Gerade keine. Was ein Gerät an den Broker sendet, erscheint hier, gleich auf welchem Topic, solange eine Zahl darin ist.';

export const topics: typeof English = {
  title: 'Topics',
  about:
    'Sensoren auf den üblichen Topics werden so verstanden, wie sie sind. Für jedes andere Gerät sagt eine Regel, welche Topics seine sind und was in seinen Nachrichten steht.',
  foundTitle: 'Gefunden, noch nicht bekannt',
  rulesTitle: 'Regeln',
  newRule: 'Eine neue Regel',
  changeRule: 'Eine Regel ändern',
  writeNew: 'Eine neue Regel schreiben',
  leaveAsItWas: 'Lassen, wie sie war',

  found: {
    none: noneFound,
    noneOthers: (others) =>
      `${noneFound} ${plural('de', others, {
        one: `${others} Topic war ohne Zahl zu hören.`,
        other: `${others} Topics waren ohne Zahl zu hören.`,
      })}`,
    more: (count) =>
      plural('de', count, { one: `${count} weiteres Topic`, other: `${count} weitere Topics` }),
    leftOut: (messages) =>
      plural('de', messages, {
        one: `${messages} Nachricht auf weiteren Topics wurde nicht angesehen: Die Zahl der Topics ist begrenzt (discovery.maxTopics in den Einstellungen).`,
        other: `${messages} Nachrichten auf weiteren Topics wurden nicht angesehen: Die Zahl der Topics ist begrenzt (discovery.maxTopics in den Einstellungen).`,
      }),
    onRequest: 'Auf unbekannte Topics am anderen Broker wird auf Wunsch gehört, zehn Minuten lang.',
    listeningUntil: (until) => `Alle Topics werden gehört bis ${until}.`,
    listen: 'Zehn Minuten zuhören',
    stopListening: 'Nicht mehr zuhören',

    heard: (ago, messages) => (messages > 1 ? `${ago}, ${messages} Nachrichten` : ago),
    heardKept: (ago, messages) =>
      messages > 1
        ? `vom Broker aufbewahrt, gehört ${ago}, ${messages} Nachrichten`
        : `vom Broker aufbewahrt, gehört ${ago}`,
    whatIs: (shown) => `Was ${shown} ist`,
    whatIsAt: (shown, pointer) => `Was ${shown} an der Stelle ${pointer} ist`,
    looksLike: (reading) => `sieht aus wie ${reading}`,
    notUsed: 'nicht benutzt',
    choose: 'wählen',
    whereHangs: (sensor) => `Wo ${sensor} hängt`,
    nowhereYet: 'noch nirgends',
    takeIn: 'Aufnehmen',
    taken: (sensor) => `${sensor} ist ab der nächsten Nachricht ein Sensor.`,
    takenAt: (sensor, place) =>
      `${sensor} hängt jetzt hier: ${place}; die nächste Nachricht zählt.`,
    writeRule: 'Stattdessen eine Regel dafür schreiben',
    writeRuleMore: (more) =>
      plural('de', more, {
        one: `Stattdessen eine Regel dafür schreiben (${more} weitere Zahl darin)`,
        other: `Stattdessen eine Regel dafür schreiben (${more} weitere Zahlen darin)`,
      }),
  },

  payloads: {
    text: 'Eine Zahl als Text',
    json: 'JSON',
    senml: 'SenML',
  },

  list: {
    none: 'Noch keine. Sensoren auf den üblichen Topics brauchen keine.',
    brings: (payload, quantities) => `${payload}: ${quantities}`,
    ofSensor: (sensor) => ['von ', sensor],
    hiddenBy: (other) => [
      'Sie bekommt nichts: Die Regel für ',
      other,
      ' kommt zuerst und nimmt alle ihre Topics.',
    ],
    change: 'Ändern',
    takeAway: 'Wegnehmen',
    gone: (pattern) => `Die Regel für ${pattern} ist weg; ihre Messwerte bleiben.`,
  },

  editor: {
    pattern: 'Topics',
    patternHint: '{sensor} benennt eine Ebene, + ist eine beliebige Ebene, # ist der ganze Rest',
    sensor: 'Der Name des Sensors',
    sensorHint: 'Text, Teile wie {sensor} und in JSON Stellen wie {/id}',
    payload: 'Wie eine Nachricht aussieht',
    oneMore: 'Noch eine Größe',
    timeFrom: 'Wo ihre Zeit steht',
    timeFromHint: 'wie /time; leer lassen, wenn es keine gibt',
    timeFormat: 'Wie die Zeit geschrieben ist',
    timeFormats: {
      any: 'von selbst erkennen',
      iso: 'ISO 8601',
      'epoch-s': 'Sekunden seit 1970',
      'epoch-ms': 'Millisekunden seit 1970',
      'age-s': 'vor so vielen Sekunden',
      'age-ms': 'vor so vielen Millisekunden',
    },
    whereHeardHang: 'Wo die bisher gehörten Sensoren hängen',
    nowhereYet: 'noch nirgends',
    save: 'Regel speichern',
    saveChange: 'Änderung speichern',
    saved: (pattern) => `Die Regel für ${pattern} gilt von nun an.`,
  },

  value: {
    first: 'Was sie bringt',
    further: 'Und',
    quantity: 'Größe',
    pointer: 'Wo sie steht',
    pointerHint: 'wie /data/temp, oder /0/t in einer Liste',
    name: 'Ende ihres Namens',
    nameHint: 'was nach dem letzten / : oder . kommt',
    unit: 'Ihre Einheit',
    fraction: 'Anteil von 1',
    times: 'Mal',
    timesHint: '0.1 für Zehntel',
    otherSensor: 'Ein anderer Sensor',
    otherSensorHint: 'wenn eine Nachricht mehrere hat',
    leaveOut: (quantity) => `${quantity} weglassen`,
  },

  trial: {
    title: 'Was sie aus den letzten Nachrichten machen würde',
    nothingYet: 'Noch nichts ausprobiert.',
    noTopic: 'Noch kam keine Nachricht, die diese Regel nähme.',
    wouldTake: (count) =>
      plural('de', count, {
        one: 'Sie nähme ein gehörtes Topic.',
        other: `Sie nähme ${count} gehörte Topics.`,
      }),
    othersTake: (count) =>
      plural('de', count, {
        one: `Andere Regeln nehmen ${count} weiteres, das passt.`,
        other: `Andere Regeln nehmen ${count} weitere, die passen.`,
      }),
    message: 'Diese Nachricht',
    become: 'würde zu',
    reading: (reading, quantity, sensor) => [reading, ` ${quantity} von ${sensor}`],
    readingAt: (reading, quantity, sensor, at) => [
      reading,
      ` ${quantity} von ${sensor}, gemessen ${at}`,
    ],
  },
};
