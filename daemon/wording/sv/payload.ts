import type { RuleTimeFormat } from '../../contract/topic-rule.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { OtherThing, PayloadSentences } from '../subject/payload.ts';
import { quantityNames } from './detail.ts';

const otherThings: Readonly<Record<OtherThing, string>> = {
  voltage: 'en spänning',
  current: 'en strömstyrka',
  power: 'effekt eller energi',
  pressure: 'ett tryck',
  light: 'ljus',
  time: 'en tid',
  length: 'en längd',
  'absolute-humidity': 'absolut fuktighet',
  signal: 'en signalnivå',
  temperature: 'en temperatur',
  resistance: 'en resistans',
  'share-of-air': 'en andel av luften',
  share: 'procent eller en andel',
  milliohm: 'en tusendels ohm, knappast en miljon',
};

const times: Readonly<Record<RuleTimeFormat, string>> = {
  any: 'vilken som helst',
  iso: 'ISO 8601',
  'epoch-s': 'sekunder sedan 1970',
  'epoch-ms': 'millisekunder sedan 1970',
  'age-s': 'sekunder innan det skickades',
  'age-ms': 'millisekunder innan det skickades',
};

const record = (number: number) => `post ${number} i SenML-paketet`;
const Record = (number: number) => `Post ${number} i SenML-paketet`;
const unitAt = (unit: string, spot: Inner | null, say: (inner: Inner) => string) =>
  spot === null ? `Enheten ${unit}` : `Enheten ${unit} ${say(spot)}`;
const notJson = 'Innehållet börjar som JSON men kan inte läsas som JSON';
const notCbor = 'Innehållet börjar som CBOR men kan inte läsas som CBOR';
const whole = 'Kontrollera att det skickas helt och som byte.';

export const payload: Phrases<PayloadSentences> = {
  'spot/payload': () => 'i innehållet',
  'spot/object': () => 'i JSON-objektet',
  'spot/top': () => 'överst',
  'spot/at': ({ pointer }) => `vid ${pointer}`,
  'spot/value-top': () => 'i värdet överst',
  'spot/value-at': ({ pointer }) => `i värdet vid ${pointer}`,
  'spot/record': (told) => `i ${record(told.record)}`,
  'thing/payload': () => 'Innehållet',
  'thing/value-top': () => 'Värdet överst',
  'thing/value-at': ({ pointer }) => `Värdet vid ${pointer}`,
  'sent/array': () => 'en lista',
  'sent/object': () => 'ett objekt',
  'sent/nothing': () => 'ingenting',

  'payload-large': ({ bytes, mostBytes }) =>
    `Innehållet har ${bytes} byte, fler än de ${mostBytes} som granskas; skicka färre poster i ett meddelande.`,
  'payload-not-text': () =>
    'Innehållet är varken UTF-8-text eller en lista i CBOR; skicka ett tal som text, JSON eller ett SenML-paket.',
  'payload-empty': () => 'Innehållet är tomt; skicka ett tal som text, eller JSON.',
  'payload-not-pack': ({ sent }, _speak, say) =>
    `Innehållet är ${say(sent)}; regeln väntar sig ett SenML-paket, alltså en lista med poster.`,
  'payload-is-cbor/json': () =>
    'Innehållet är CBOR, men regeln väntar sig JSON; låt regeln vänta sig SenML.',
  'payload-is-cbor/text': () =>
    'Innehållet är CBOR, men regeln väntar sig text; låt regeln vänta sig SenML.',
  'json-broken/not-finite': ({ options }) =>
    `${notJson}; JSON känner inte ${options.join(' eller ')}, så utelämna värdet när det inte finns något.`,
  'json-broken/not-whole': () =>
    `${notJson}; kontrollera att det är helt, med parenteser och citattecken slutna.`,
  'cbor-broken': ({ because }) => `${notCbor}: ”${because}”. ${whole}`,
  'cbor-broken/too-deep': () => `${notCbor}: det är för djupt nästlat. ${whole}`,
  'cbor-broken/fraction': () => `${notCbor}: ett decimalbråk är inte två heltal. ${whole}`,
  'cbor-not-array': () => 'CBOR-innehållet är ingen lista; ett SenML-paket är en lista med poster.',
  'quantity-not-said/text': ({ word }) =>
    `Innehållet ${word} säger inte vad som mättes; lägg storheten till ämnet, eller skicka ett SenML-paket.`,
  'quantity-not-said/object': () =>
    'Innehållet är ett JSON-objekt på ett ämne utan storhet; lägg storheten till ämnet, eller skicka ett SenML-paket, alltså en lista med poster.',
  'object-without-value': () => 'JSON-objektet har inget värde; skicka talet under namnet value.',
  'object-value-not-number': ({ sent }, _speak, say) =>
    `Värdet i JSON-objektet är ${say(sent)}; skicka själva talet.`,
  'object-value-not-number/quoted': ({ sent }, _speak, say) =>
    `Värdet i JSON-objektet är ${say(sent)}; skicka själva talet, utan citattecken.`,
  'nothing-at-pointers': ({ pointers, more }) =>
    `Ingenting står vid ${pointers.join(', ')}${more > 0 ? ' och så vidare' : ''}, där regeln letar efter värden; rätta regeln, eller låt den inte ta det här ämnet.`,
  'value-not-number': ({ spot, sent }, _speak, say) =>
    `Värdet ${say(spot)} är ${say(sent)}; låt regeln peka på ett tal, eller på text som innehåller ett.`,
  'value-not-finite': ({ spot, word }, _speak, say) =>
    `Värdet ${say(spot)} är ${word}, vilket inte är ett ändligt tal; skicka ingenting när givaren inte ger något mätvärde.`,
  'value-beyond': ({ spot, value, quantity, low, high }, speak, say) =>
    `Värdet ${say(spot)} är ${speak.quantity(value, quantity)}, men ${quantityNames[quantity]} ligger mellan ${speak.bare.quantity(low, quantity)} och ${speak.quantity(high, quantity)}; kontrollera givaren, dess ledningar och dess enhet.`,
  'value-beyond/share': ({ spot, value, quantity, low, high }, speak, say) =>
    `Värdet ${say(spot)} är ${speak.quantity(value, quantity)}, men ${quantityNames[quantity]} ligger mellan ${speak.bare.quantity(low, quantity)} och ${speak.quantity(high, quantity)}; kontrollera givaren, dess ledningar och dess enhet (i SenML är ”/” och ”%” andelar från 0 till 1).`,
  'number-not-finite': ({ what, word }, _speak, say) =>
    `${say(what)} är ${word}, vilket inte är ett ändligt tal; skicka ingenting när givaren inte ger något mätvärde.`,
  'not-decimal/quoted': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} är inget decimaltal; skicka talet utan citattecken.`,
  'not-decimal/grouped': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} är inget decimaltal; skicka det med en decimalpunkt och inget tecken mellan tusental.`,
  'not-decimal/trailing': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} är inte bara ett decimaltal; skicka talet utan något efter än dess enhet.`,
  'not-decimal/other': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} är inget decimaltal; skicka ett tal som 21.5, eller JSON som {"value":21.5}.`,
  'number-ambiguous': ({ what, word, asPoint, asThousands }, _speak, say) =>
    `${say(what)} ${word} kan betyda ${asPoint} eller ${asThousands}; skicka det med decimalpunkt, eller utan komma.`,
  'unit-unfit': ({ unit, spot, quantity, options }, _speak, say) =>
    `${unitAt(unit, spot, say)} är inte känd här och passar inte ${quantityNames[quantity]}; använd ${options.join(' eller ')}.`,
  'unit-unfit/other': ({ unit, spot, quantity, options, measures }, _speak, say) =>
    `${unitAt(unit, spot, say)} betyder ${otherThings[measures]} och passar inte ${quantityNames[quantity]}; använd ${options.join(' eller ')}.`,

  'pack-empty': () => 'SenML-paketet är en tom lista; skicka minst en post.',
  'pack-large': ({ records, mostRecords }) =>
    `SenML-paketet har ${records} poster; skicka högst ${mostRecords} i ett meddelande.`,
  'pack-without-value': () =>
    'SenML-paketet innehåller bara basfält och inget värde; ange talet som v.',
  'pack-version': ({ sent, version, ...told }, _speak, say) =>
    `SenML-versionen bver i post ${told.record} är ${say(sent)}, vilket inte förstås här; skicka version ${version} eller utelämna bver.`,
  'pack-versions': ({ version, earlier, ...told }) =>
    `SenML-versionen bver i post ${told.record} är ${version}, men en tidigare post säger ${earlier}; ange en version för hela paketet.`,
  'base-field': ({ field, fieldType, sent, ...told }, _speak, say) =>
    `Basfältet ${field} i ${record(told.record)} är ${say(sent)} i stället för ${fieldType === 'number' ? 'ett tal' : 'en text'}, så varken den här posten eller de som bygger på den kan läsas.`,
  'must-understand': ({ field, ...told }) =>
    `Fältet ${field} i ${record(told.record)} måste förstås av den som läser det, och är inte känt här; skicka mätvärdet utan det.`,
  'record-not-object': ({ sent, ...told }, _speak, say) =>
    `${Record(told.record)} är ${say(sent)}; varje post är ett objekt som {"n":"air-temperature","u":"Cel","v":21.5}.`,
  'record-name': ({ sent, ...told }, _speak, say) =>
    `Namnet n i ${record(told.record)} är ${say(sent)}; det måste vara text.`,
  'record-unit': ({ sent, ...told }, _speak, say) =>
    `Enheten u i ${record(told.record)} är ${say(sent)}; den måste vara text som ”Cel”.`,
  'record-time': ({ sent, ...told }, _speak, say) =>
    `Tiden t i ${record(told.record)} är ${say(sent)}; i SenML är en tid ett antal sekunder.`,
  'record-values': ({ fields, ...told }) =>
    `${Record(told.record)} har ${fields.join(' och ')}; en post innehåller ett värde.`,
  'record-without-value': (told) =>
    `${Record(told.record)} har inget värde; ange talet som v, eller utelämna posten.`,
  'record-value': ({ sent, ...told }, _speak, say) =>
    `Värdet v i ${record(told.record)} är ${say(sent)}; skicka själva talet, utan citattecken.`,
  'record-without-number': ({ name, quantity, ...told }) =>
    `Posten med namnet ${name} i ${record(told.record)} har inget tal; ange ${quantity} som v.`,
  'record-unit-unfit': ({ unit, quantity, options, keptUnit, ...told }) =>
    `Enheten ${unit} i ${record(told.record)} passar inte ${quantity}; använd ${options.join(' eller ')}, eller utelämna enheten för ${keptUnit}.`,
  'name-not-allowed': ({ name, ...told }) =>
    `Namnet ${name} i ${record(told.record)} är inte tillåtet; börja med en bokstav eller siffra och använd bara A–Z a–z 0–9 - : . / _`,
  'name-no-quantity': ({ name, segment, options, ...told }) =>
    `Namnet ${name} i ${record(told.record)} slutar på ${segment}, vilket inte är en storhet som är känd här; låt det, efter / eller : eller ., sluta på en av ${options.join(', ')}.`,
  'name-no-quantity/of-rule': ({ name, segment, options, ...told }) =>
    `Namnet ${name} i ${record(told.record)} slutar på ${segment}, som regeln inte har någon storhet för; lägg till det i regeln, eller låt namnet sluta på en av ${options.join(', ')}.`,
  'name-other-quantity': ({ name, segment, quantity, ...told }) =>
    `Namnet ${name} i ${record(told.record)} säger ${segment}, men ämnet säger ${quantity}; skicka paketet till ämnet utan storhet.`,

  'topic-levels': ({ topic, site }) =>
    `Ämnet ${topic} har fel antal delar; skicka till boardcure/${site}/sensor/<sensor> eller boardcure/${site}/sensor/<sensor>/<quantity>.`,
  'topic-sensor': ({ word }) =>
    `Givarens namn ${word} i ämnet är inte tillåtet; använd 1 till 64 av tecknen A–Z a–z 0–9 . _ -`,
  'topic-quantity': ({ word, options }) =>
    `Ämnet slutar på ${word}, vilket inte är en storhet som är känd här; låt det sluta på en av ${options.join(', ')}.`,
  'sensor-name-missing': ({ pointer, sent }, _speak, say) =>
    `Vid ${pointer}, där givarens namn ska stå, finns ${say(sent)}; peka på en text eller ett tal i innehållet.`,
  'sensor-name': ({ word }) =>
    `Givarens namn ${word} är inte tillåtet; det får ha 1 till 64 av tecknen A–Z a–z 0–9 . _ - och behöver en bokstav eller siffra.`,

  'time-unlike': ({ sent }, _speak, say) =>
    `Tiden är ${say(sent)}; skicka ISO 8601-text eller sekunder sedan 1970.`,
  'time-unlike/iso': ({ sent }, _speak, say) =>
    `Tiden är ${say(sent)}; regeln väntar sig ISO 8601-text.`,
  'time-unlike/number': ({ sent, format }, _speak, say) =>
    `Tiden är ${say(sent)}; regeln väntar sig ett tal (${times[format]}).`,
  'time-no-zone': ({ word }) =>
    `Tiden ${word} säger inte vilken tidszon den menar; ange datum och klockslag, och lägg till Z för UTC eller en skillnad som +02:00.`,
  'time-not-iso': ({ word }) =>
    `Tiden ${word} är inte ISO 8601; skriv den som 2026-05-04T07:30:00Z, eller skicka sekunder sedan 1970 som tal.`,
  'time-no-such-day': ({ word }) => `Tiden ${word} anger ett datum eller klockslag som inte finns.`,
  'time-beyond': ({ word, spot }, _speak, say) =>
    `Tiden ${word} ligger utanför varje kalender; skicka sekunder sedan 1970 i UTC${spot === null ? '' : ` (${say(spot)})`}.`,
  'time-age': ({ word, mostAge, format }, speak) =>
    `Åldern är ${word}; den måste vara från 0 till ${speak.number(mostAge)} (${times[format]}). Är det en tid sedan 1970?`,

  'forecast-not-array': ({ points }) =>
    `Prognosen måste vara en JSON-lista med högst ${points} punkter som {"time":"2026-05-04T07:00:00Z","tempC":12.5}.`,
  'forecast-temperature': ({ point, sent, low, high }, speak, say) =>
    `tempC i punkt ${point} är ${say(sent)}; det måste vara ett tal från ${speak.number(low)} till ${speak.number(high)} °C.`,
  'forecast-figure': ({ point, field, sent, most }, speak, say) =>
    `${field} i punkt ${point} är ${say(sent)}; det måste vara ett tal från 0 till ${speak.number(most)}, eller utelämnas.`,

  'sensor-too-many': ({ sensor, sensors }) =>
    `Givaren ${sensor} är ny, men ${sensors} givare känns redan, så många som får finnas; höj mqtt.maxSensors om de är dina.`,
  'message-cut': ({ keptBytes, bytes }) =>
    `Bara de första ${keptBytes} av dess ${bytes} byte är sparade, så det går inte att pröva; höj discovery.maxBytes i inställningarna.`,
  'topic-not-taken': () => 'Ämnet passar inte mönstret, eller en tidigare regel tar det.',
};
