import type { RuleTimeFormat } from '../../contract/topic-rule.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { OtherThing, PayloadSentences } from '../subject/payload.ts';
import { quantityNames } from './detail.ts';

const otherThings: Readonly<Record<OtherThing, string>> = {
  voltage: 'eine Spannung',
  current: 'eine Stromstärke',
  power: 'Leistung oder Energie',
  pressure: 'einen Druck',
  light: 'Licht',
  time: 'eine Zeit',
  length: 'eine Länge',
  'absolute-humidity': 'absolute Feuchte',
  signal: 'einen Signalpegel',
  temperature: 'eine Temperatur',
  resistance: 'einen Widerstand',
  'share-of-air': 'einen Anteil der Luft',
  share: 'Prozent oder einen Anteil',
  milliohm: 'ein Tausendstel Ohm, kaum eine Million',
};

const times: Readonly<Record<RuleTimeFormat, string>> = {
  any: 'beliebig',
  iso: 'ISO 8601',
  'epoch-s': 'Sekunden seit 1970',
  'epoch-ms': 'Millisekunden seit 1970',
  'age-s': 'Sekunden vor dem Senden',
  'age-ms': 'Millisekunden vor dem Senden',
};

const record = (number: number) => `Eintrag ${number} des SenML-Pakets`;
const unitAt = (unit: string, spot: Inner | null, say: (inner: Inner) => string) =>
  spot === null ? `Die Einheit ${unit}` : `Die Einheit ${unit} ${say(spot)}`;
const notJson = 'Der Inhalt beginnt wie JSON, lässt sich aber nicht als JSON lesen';
const notCbor = 'Der Inhalt beginnt wie CBOR, lässt sich aber nicht als CBOR lesen';
const whole = 'Prüfen, ob er ganz und als Bytes gesendet wird.';

export const payload: Phrases<PayloadSentences> = {
  'spot/payload': () => 'im Inhalt',
  'spot/object': () => 'im JSON-Objekt',
  'spot/top': () => 'ganz oben',
  'spot/at': ({ pointer }) => `bei ${pointer}`,
  'spot/value-top': () => 'im Wert ganz oben',
  'spot/value-at': ({ pointer }) => `im Wert bei ${pointer}`,
  'spot/record': (told) => `in ${record(told.record)}`,
  'thing/payload': () => 'Der Inhalt',
  'thing/value-top': () => 'Der Wert ganz oben',
  'thing/value-at': ({ pointer }) => `Der Wert bei ${pointer}`,
  'sent/array': () => 'eine Liste',
  'sent/object': () => 'ein Objekt',
  'sent/nothing': () => 'nichts',

  'payload-large': ({ bytes, mostBytes }) =>
    `Der Inhalt hat ${bytes} Bytes, mehr als die ${mostBytes}, die angesehen werden; weniger Einträge in einer Nachricht senden.`,
  'payload-not-text': () =>
    'Der Inhalt ist weder UTF-8-Text noch eine Liste in CBOR; eine Zahl als Text, JSON oder ein SenML-Paket senden.',
  'payload-empty': () => 'Der Inhalt ist leer; eine Zahl als Text oder JSON senden.',
  'payload-not-pack': ({ sent }, _speak, say) =>
    `Der Inhalt ist ${say(sent)}; die Regel erwartet ein SenML-Paket, also eine Liste von Einträgen.`,
  'payload-is-cbor/json': () =>
    'Der Inhalt ist CBOR, die Regel erwartet aber JSON; die Regel SenML erwarten lassen.',
  'payload-is-cbor/text': () =>
    'Der Inhalt ist CBOR, die Regel erwartet aber Text; die Regel SenML erwarten lassen.',
  'json-broken/not-finite': ({ options }) =>
    `${notJson}; JSON kennt kein ${options.join(' und kein ')}, also den Wert weglassen, wenn es keinen gibt.`,
  'json-broken/not-whole': () =>
    `${notJson}; prüfen, ob er ganz ist, mit geschlossenen Klammern und Anführungszeichen.`,
  'cbor-broken': ({ because }) => `${notCbor}: „${because}“. ${whole}`,
  'cbor-broken/too-deep': () => `${notCbor}: zu tief verschachtelt. ${whole}`,
  'cbor-broken/fraction': () =>
    `${notCbor}: Ein Dezimalbruch besteht nicht aus zwei ganzen Zahlen. ${whole}`,
  'cbor-not-array': () =>
    'Der CBOR-Inhalt ist keine Liste; ein SenML-Paket ist eine Liste von Einträgen.',
  'quantity-not-said/text': ({ word }) =>
    `Der Inhalt ${word} sagt nicht, was gemessen wurde; die Größe an das Topic hängen oder ein SenML-Paket senden.`,
  'quantity-not-said/object': () =>
    'Der Inhalt ist ein einzelnes JSON-Objekt auf einem Topic ohne Größe; die Größe an das Topic hängen oder ein SenML-Paket senden, also eine Liste von Einträgen.',
  'object-without-value': () =>
    'Das JSON-Objekt hat keinen Wert; die Zahl unter dem Namen value senden.',
  'object-value-not-number': ({ sent }, _speak, say) =>
    `Der Wert im JSON-Objekt ist ${say(sent)}; die Zahl selbst senden.`,
  'object-value-not-number/quoted': ({ sent }, _speak, say) =>
    `Der Wert im JSON-Objekt ist ${say(sent)}; die Zahl selbst senden, ohne Anführungszeichen.`,
  'nothing-at-pointers': ({ pointers, more }) =>
    `Nichts steht bei ${pointers.join(', ')}${more > 0 ? ' und so weiter' : ''}, wo die Regel Werte sucht; die Regel berichtigen oder dieses Topic von ihr ausnehmen.`,
  'value-not-number': ({ spot, sent }, _speak, say) =>
    `Der Wert ${say(spot)} ist ${say(sent)}; die Regel auf eine Zahl zeigen lassen oder auf Text, der eine enthält.`,
  'value-not-finite': ({ spot, word }, _speak, say) =>
    `Der Wert ${say(spot)} ist ${word}, keine endliche Zahl; nichts senden, wenn der Sensor keinen Messwert liefert.`,
  'value-beyond': ({ spot, value, quantity, low, high }, speak, say) =>
    `Der Wert ${say(spot)} ist ${speak.quantity(value, quantity)}, möglich ist ${speak.bare.quantity(low, quantity)} bis ${speak.quantity(high, quantity)} (${quantityNames[quantity]}); Sensor, Verdrahtung und Einheit prüfen.`,
  'value-beyond/share': ({ spot, value, quantity, low, high }, speak, say) =>
    `Der Wert ${say(spot)} ist ${speak.quantity(value, quantity)}, möglich ist ${speak.bare.quantity(low, quantity)} bis ${speak.quantity(high, quantity)} (${quantityNames[quantity]}); Sensor, Verdrahtung und Einheit prüfen (in SenML sind „/“ und „%“ Anteile von 0 bis 1).`,
  'number-not-finite': ({ what, word }, _speak, say) =>
    `${say(what)} ist ${word}, keine endliche Zahl; nichts senden, wenn der Sensor keinen Messwert liefert.`,
  'not-decimal/quoted': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} ist keine Dezimalzahl; die Zahl ohne Anführungszeichen senden.`,
  'not-decimal/grouped': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} ist keine Dezimalzahl; mit einem einzigen Dezimalpunkt und ohne Zeichen zwischen Tausendern senden.`,
  'not-decimal/trailing': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} ist nicht nur eine Dezimalzahl; die Zahl senden und dahinter höchstens ihre Einheit.`,
  'not-decimal/other': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} ist keine Dezimalzahl; eine Zahl wie 21.5 senden oder JSON wie {"value":21.5}.`,
  'number-ambiguous': ({ what, word, asPoint, asThousands }, _speak, say) =>
    `${say(what)} ${word} kann ${asPoint} oder ${asThousands} heißen; mit Dezimalpunkt oder ohne Komma senden.`,
  'unit-unfit': ({ unit, spot, quantity, options }, _speak, say) =>
    `${unitAt(unit, spot, say)} ist hier nicht bekannt und passt nicht zur Größe (${quantityNames[quantity]}); ${options.join(' oder ')} nehmen.`,
  'unit-unfit/other': ({ unit, spot, quantity, options, measures }, _speak, say) =>
    `${unitAt(unit, spot, say)} meint ${otherThings[measures]} und passt nicht zur Größe (${quantityNames[quantity]}); ${options.join(' oder ')} nehmen.`,

  'pack-empty': () => 'Das SenML-Paket ist eine leere Liste; mindestens einen Eintrag senden.',
  'pack-large': ({ records, mostRecords }) =>
    `Das SenML-Paket hat ${records} Einträge; höchstens ${mostRecords} in einer Nachricht senden.`,
  'pack-without-value': () =>
    'Das SenML-Paket enthält nur Basisfelder und keinen Wert; die Zahl als v angeben.',
  'pack-version': ({ sent, version, ...told }, _speak, say) =>
    `Die SenML-Version bver in Eintrag ${told.record} ist ${say(sent)} und wird hier nicht verstanden; Version ${version} senden oder bver weglassen.`,
  'pack-versions': ({ version, earlier, ...told }) =>
    `Die SenML-Version bver in Eintrag ${told.record} ist ${version}, ein früherer Eintrag sagt aber ${earlier}; eine Version für das ganze Paket angeben.`,
  'base-field': ({ field, fieldType, sent, ...told }, _speak, say) =>
    `Das Basisfeld ${field} in ${record(told.record)} ist ${say(sent)} statt ${fieldType === 'number' ? 'einer Zahl' : 'eines Textes'}; weder dieser Eintrag noch die, die darauf bauen, sind lesbar.`,
  'must-understand': ({ field, ...told }) =>
    `Das Feld ${field} in ${record(told.record)} muss verstehen, wer es liest, und hier ist es nicht bekannt; den Messwert ohne es senden.`,
  'record-not-object': ({ sent, ...told }, _speak, say) =>
    `${record(told.record)} ist ${say(sent)}; jeder Eintrag ist ein Objekt wie {"n":"air-temperature","u":"Cel","v":21.5}.`,
  'record-name': ({ sent, ...told }, _speak, say) =>
    `Der Name n in ${record(told.record)} ist ${say(sent)}; er muss Text sein.`,
  'record-unit': ({ sent, ...told }, _speak, say) =>
    `Die Einheit u in ${record(told.record)} ist ${say(sent)}; sie muss Text sein wie „Cel“.`,
  'record-time': ({ sent, ...told }, _speak, say) =>
    `Die Zeit t in ${record(told.record)} ist ${say(sent)}; in SenML ist eine Zeit eine Zahl von Sekunden.`,
  'record-values': ({ fields, ...told }) =>
    `${record(told.record)} hat ${fields.join(' und ')}; ein Eintrag enthält einen Wert.`,
  'record-without-value': (told) =>
    `${record(told.record)} hat keinen Wert; die Zahl als v angeben oder den Eintrag weglassen.`,
  'record-value': ({ sent, ...told }, _speak, say) =>
    `Der Wert v in ${record(told.record)} ist ${say(sent)}; die Zahl selbst senden, ohne Anführungszeichen.`,
  'record-without-number': ({ name, quantity, ...told }) =>
    `${record(told.record)} mit dem Namen ${name} hat keine Zahl; ${quantity} als v angeben.`,
  'record-unit-unfit': ({ unit, quantity, options, keptUnit, ...told }) =>
    `Die Einheit ${unit} in ${record(told.record)} passt nicht zu ${quantity}; ${options.join(' oder ')} nehmen oder die Einheit für ${keptUnit} weglassen.`,
  'name-not-allowed': ({ name, ...told }) =>
    `Der Name ${name} in ${record(told.record)} ist nicht erlaubt; mit einem Buchstaben oder einer Ziffer beginnen und nur A–Z a–z 0–9 - : . / _ nehmen.`,
  'name-no-quantity': ({ name, segment, options, ...told }) =>
    `Der Name ${name} in ${record(told.record)} endet auf ${segment}, was keine hier bekannte Größe ist; ihn nach / oder : oder . auf eine von diesen enden lassen: ${options.join(', ')}.`,
  'name-no-quantity/of-rule': ({ name, segment, options, ...told }) =>
    `Der Name ${name} in ${record(told.record)} endet auf ${segment}, wofür die Regel keine Größe hat; es in die Regel aufnehmen oder den Namen auf eine von diesen enden lassen: ${options.join(', ')}.`,
  'name-other-quantity': ({ name, segment, quantity, ...told }) =>
    `Der Name ${name} in ${record(told.record)} sagt ${segment}, das Topic aber ${quantity}; das Paket an das Topic ohne Größe senden.`,

  'topic-levels': ({ topic, site }) =>
    `Das Topic ${topic} hat die falsche Zahl von Teilen; an boardcure/${site}/sensor/<sensor> oder boardcure/${site}/sensor/<sensor>/<quantity> senden.`,
  'topic-sensor': ({ word }) =>
    `Der Sensorname ${word} im Topic ist nicht erlaubt; 1 bis 64 der Zeichen A–Z a–z 0–9 . _ - nehmen.`,
  'topic-quantity': ({ word, options }) =>
    `Das Topic endet auf ${word}, was keine hier bekannte Größe ist; es auf eine von diesen enden lassen: ${options.join(', ')}.`,
  'sensor-name-missing': ({ pointer, sent }, _speak, say) =>
    `Bei ${pointer}, wo der Name des Sensors stehen sollte, steht ${say(sent)}; auf einen Text oder eine Zahl im Inhalt zeigen.`,
  'sensor-name': ({ word }) =>
    `Der Sensorname ${word} ist nicht erlaubt; er darf 1 bis 64 der Zeichen A–Z a–z 0–9 . _ - haben und braucht einen Buchstaben oder eine Ziffer.`,

  'time-unlike': ({ sent }, _speak, say) =>
    `Die Zeit ist ${say(sent)}; Text nach ISO 8601 oder Sekunden seit 1970 senden.`,
  'time-unlike/iso': ({ sent }, _speak, say) =>
    `Die Zeit ist ${say(sent)}; die Regel erwartet Text nach ISO 8601.`,
  'time-unlike/number': ({ sent, format }, _speak, say) =>
    `Die Zeit ist ${say(sent)}; die Regel erwartet eine Zahl (${times[format]}).`,
  'time-no-zone': ({ word }) =>
    `Die Zeit ${word} sagt nicht, welche Zeitzone sie meint; Datum und Uhrzeit angeben und Z für UTC anhängen oder einen Abstand wie +02:00.`,
  'time-not-iso': ({ word }) =>
    `Die Zeit ${word} ist nicht ISO 8601; wie 2026-05-04T07:30:00Z schreiben oder Sekunden seit 1970 als Zahl senden.`,
  'time-no-such-day': ({ word }) =>
    `Die Zeit ${word} nennt einen Tag oder eine Stunde, die es nicht gibt.`,
  'time-beyond': ({ word, spot }, _speak, say) =>
    `Die Zeit ${word} liegt jenseits jedes Kalenders; Sekunden seit 1970 in UTC senden${spot === null ? '' : ` (${say(spot)})`}.`,
  'time-age': ({ word, mostAge, format }, speak) =>
    `Das Alter ist ${word}; es muss von 0 bis ${speak.number(mostAge)} gehen (${times[format]}). Ist es eine Zeit seit 1970?`,

  'forecast-not-array': ({ points }) =>
    `Die Vorhersage muss eine JSON-Liste von höchstens ${points} Punkten sein wie {"time":"2026-05-04T07:00:00Z","tempC":12.5}.`,
  'forecast-temperature': ({ point, sent, low, high }, speak, say) =>
    `tempC von Punkt ${point} ist ${say(sent)}; nötig ist eine Zahl von ${speak.number(low)} bis ${speak.number(high)} °C.`,
  'forecast-figure': ({ point, field, sent, most }, speak, say) =>
    `${field} von Punkt ${point} ist ${say(sent)}; nötig ist eine Zahl von 0 bis ${speak.number(most)}, oder weglassen.`,

  'sensor-too-many': ({ sensor, sensors }) =>
    `Sensor ${sensor} ist neu, aber ${sensors} Sensoren sind schon bekannt, so viele wie erlaubt; mqtt.maxSensors erhöhen, wenn es die eigenen sind.`,
  'message-cut': ({ keptBytes, bytes }) =>
    `Nur die ersten ${keptBytes} der ${bytes} Bytes sind gemerkt, daher lässt sie sich nicht ausprobieren; discovery.maxBytes in den Einstellungen erhöhen.`,
  'topic-not-taken': () => 'Das Topic passt nicht zum Muster, oder eine frühere Regel nimmt es.',
};
