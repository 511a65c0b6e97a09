import type { RuleTimeFormat } from '../../contract/topic-rule.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { OtherThing, PayloadSentences } from '../subject/payload.ts';
import { quantityNames } from './detail.ts';

const otherThings: Readonly<Record<OtherThing, string>> = {
  voltage: 'en spenning',
  current: 'en strømstyrke',
  power: 'effekt eller energi',
  pressure: 'et trykk',
  light: 'lys',
  time: 'en tid',
  length: 'en lengde',
  'absolute-humidity': 'absolutt fuktighet',
  signal: 'et signalnivå',
  temperature: 'en temperatur',
  resistance: 'en resistans',
  'share-of-air': 'en andel av luften',
  share: 'prosent eller en andel',
  milliohm: 'en tusendels ohm, neppe en million',
};

const times: Readonly<Record<RuleTimeFormat, string>> = {
  any: 'hvilken som helst',
  iso: 'ISO 8601',
  'epoch-s': 'sekunder siden 1970',
  'epoch-ms': 'millisekunder siden 1970',
  'age-s': 'sekunder før det ble sendt',
  'age-ms': 'millisekunder før det ble sendt',
};

const record = (number: number) => `post ${number} i SenML-pakken`;
const Record = (number: number) => `Post ${number} i SenML-pakken`;
const unitAt = (unit: string, spot: Inner | null, say: (inner: Inner) => string) =>
  spot === null ? `Enheten ${unit}` : `Enheten ${unit} ${say(spot)}`;
const notJson = 'Innholdet begynner som JSON, men kan ikke leses som JSON';
const notCbor = 'Innholdet begynner som CBOR, men kan ikke leses som CBOR';
const whole = 'Sjekk at det sendes helt og som byte.';

export const payload: Phrases<PayloadSentences> = {
  'spot/payload': () => 'i innholdet',
  'spot/object': () => 'i JSON-objektet',
  'spot/top': () => 'øverst',
  'spot/at': ({ pointer }) => `ved ${pointer}`,
  'spot/value-top': () => 'i verdien øverst',
  'spot/value-at': ({ pointer }) => `i verdien ved ${pointer}`,
  'spot/record': (told) => `i ${record(told.record)}`,
  'thing/payload': () => 'Innholdet',
  'thing/value-top': () => 'Verdien øverst',
  'thing/value-at': ({ pointer }) => `Verdien ved ${pointer}`,
  'sent/array': () => 'en liste',
  'sent/object': () => 'et objekt',
  'sent/nothing': () => 'ingenting',

  'payload-large': ({ bytes, mostBytes }) =>
    `Innholdet har ${bytes} byte, flere enn de ${mostBytes} som blir sett på; send færre poster i én melding.`,
  'payload-not-text': () =>
    'Innholdet er verken UTF-8-tekst eller en liste i CBOR; send et tall som tekst, JSON eller en SenML-pakke.',
  'payload-empty': () => 'Innholdet er tomt; send et tall som tekst, eller JSON.',
  'payload-not-pack': ({ sent }, _speak, say) =>
    `Innholdet er ${say(sent)}; regelen venter en SenML-pakke, altså en liste med poster.`,
  'payload-is-cbor/json': () =>
    'Innholdet er CBOR, men regelen venter JSON; la regelen vente SenML.',
  'payload-is-cbor/text': () =>
    'Innholdet er CBOR, men regelen venter tekst; la regelen vente SenML.',
  'json-broken/not-finite': ({ options }) =>
    `${notJson}; JSON kjenner ikke ${options.join(' eller ')}, så utelat verdien når det ikke finnes noen.`,
  'json-broken/not-whole': () =>
    `${notJson}; sjekk at det er helt, med lukkede parenteser og anførselstegn.`,
  'cbor-broken': ({ because }) => `${notCbor}: «${because}». ${whole}`,
  'cbor-broken/too-deep': () => `${notCbor}: det er for dypt nøstet. ${whole}`,
  'cbor-broken/fraction': () => `${notCbor}: en desimalbrøk er ikke to hele tall. ${whole}`,
  'cbor-not-array': () => 'CBOR-innholdet er ingen liste; en SenML-pakke er en liste med poster.',
  'quantity-not-said/text': ({ word }) =>
    `Innholdet ${word} sier ikke hva som ble målt; legg størrelsen til emnet, eller send en SenML-pakke.`,
  'quantity-not-said/object': () =>
    'Innholdet er ett JSON-objekt på et emne uten størrelse; legg størrelsen til emnet, eller send en SenML-pakke, altså en liste med poster.',
  'object-without-value': () => 'JSON-objektet har ingen verdi; send tallet under navnet value.',
  'object-value-not-number': ({ sent }, _speak, say) =>
    `Verdien i JSON-objektet er ${say(sent)}; send selve tallet.`,
  'object-value-not-number/quoted': ({ sent }, _speak, say) =>
    `Verdien i JSON-objektet er ${say(sent)}; send selve tallet, uten anførselstegn.`,
  'nothing-at-pointers': ({ pointers, more }) =>
    `Ingenting står ved ${pointers.join(', ')}${more > 0 ? ' og så videre' : ''}, der regelen leter etter verdier; rett regelen, eller la den ikke ta dette emnet.`,
  'value-not-number': ({ spot, sent }, _speak, say) =>
    `Verdien ${say(spot)} er ${say(sent)}; la regelen peke på et tall, eller på tekst som inneholder ett.`,
  'value-not-finite': ({ spot, word }, _speak, say) =>
    `Verdien ${say(spot)} er ${word}, som ikke er et endelig tall; send ingenting når sensoren ikke gir noen måling.`,
  'value-beyond': ({ spot, value, quantity, low, high }, speak, say) =>
    `Verdien ${say(spot)} er ${speak.quantity(value, quantity)}, men ${quantityNames[quantity]} ligger mellom ${speak.bare.quantity(low, quantity)} og ${speak.quantity(high, quantity)}; sjekk sensoren, ledningene og enheten.`,
  'value-beyond/share': ({ spot, value, quantity, low, high }, speak, say) =>
    `Verdien ${say(spot)} er ${speak.quantity(value, quantity)}, men ${quantityNames[quantity]} ligger mellom ${speak.bare.quantity(low, quantity)} og ${speak.quantity(high, quantity)}; sjekk sensoren, ledningene og enheten (i SenML er «/» og «%» andeler fra 0 til 1).`,
  'number-not-finite': ({ what, word }, _speak, say) =>
    `${say(what)} er ${word}, som ikke er et endelig tall; send ingenting når sensoren ikke gir noen måling.`,
  'not-decimal/quoted': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} er ikke et desimaltall; send tallet uten anførselstegn.`,
  'not-decimal/grouped': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} er ikke et desimaltall; send det med ett desimalpunktum og uten tegn mellom tusener.`,
  'not-decimal/trailing': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} er ikke bare et desimaltall; send tallet uten noe annet etter enn enheten.`,
  'not-decimal/other': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} er ikke et desimaltall; send et tall som 21.5, eller JSON som {"value":21.5}.`,
  'number-ambiguous': ({ what, word, asPoint, asThousands }, _speak, say) =>
    `${say(what)} ${word} kan bety ${asPoint} eller ${asThousands}; send det med desimalpunktum, eller uten komma.`,
  'unit-unfit': ({ unit, spot, quantity, options }, _speak, say) =>
    `${unitAt(unit, spot, say)} er ikke kjent her og passer ikke til ${quantityNames[quantity]}; bruk ${options.join(' eller ')}.`,
  'unit-unfit/other': ({ unit, spot, quantity, options, measures }, _speak, say) =>
    `${unitAt(unit, spot, say)} betyr ${otherThings[measures]} og passer ikke til ${quantityNames[quantity]}; bruk ${options.join(' eller ')}.`,

  'pack-empty': () => 'SenML-pakken er en tom liste; send minst én post.',
  'pack-large': ({ records, mostRecords }) =>
    `SenML-pakken har ${records} poster; send høyst ${mostRecords} i én melding.`,
  'pack-without-value': () =>
    'SenML-pakken inneholder bare basisfelt og ingen verdi; oppgi tallet som v.',
  'pack-version': ({ sent, version, ...told }, _speak, say) =>
    `SenML-versjonen bver i post ${told.record} er ${say(sent)}, som ikke forstås her; send versjon ${version} eller utelat bver.`,
  'pack-versions': ({ version, earlier, ...told }) =>
    `SenML-versjonen bver i post ${told.record} er ${version}, men en tidligere post sier ${earlier}; oppgi én versjon for hele pakken.`,
  'base-field': ({ field, fieldType, sent, ...told }, _speak, say) =>
    `Basisfeltet ${field} i ${record(told.record)} er ${say(sent)} i stedet for ${fieldType === 'number' ? 'et tall' : 'en tekst'}, så verken denne posten eller de som bygger på den, kan leses.`,
  'must-understand': ({ field, ...told }) =>
    `Feltet ${field} i ${record(told.record)} må forstås av den som leser det, og er ikke kjent her; send målingen uten det.`,
  'record-not-object': ({ sent, ...told }, _speak, say) =>
    `${Record(told.record)} er ${say(sent)}; hver post er et objekt som {"n":"air-temperature","u":"Cel","v":21.5}.`,
  'record-name': ({ sent, ...told }, _speak, say) =>
    `Navnet n i ${record(told.record)} er ${say(sent)}; det må være tekst.`,
  'record-unit': ({ sent, ...told }, _speak, say) =>
    `Enheten u i ${record(told.record)} er ${say(sent)}; den må være tekst som «Cel».`,
  'record-time': ({ sent, ...told }, _speak, say) =>
    `Tiden t i ${record(told.record)} er ${say(sent)}; i SenML er en tid et antall sekunder.`,
  'record-values': ({ fields, ...told }) =>
    `${Record(told.record)} har ${fields.join(' og ')}; én post inneholder én verdi.`,
  'record-without-value': (told) =>
    `${Record(told.record)} har ingen verdi; oppgi tallet som v, eller utelat posten.`,
  'record-value': ({ sent, ...told }, _speak, say) =>
    `Verdien v i ${record(told.record)} er ${say(sent)}; send selve tallet, uten anførselstegn.`,
  'record-without-number': ({ name, quantity, ...told }) =>
    `Posten med navnet ${name} i ${record(told.record)} har ikke noe tall; oppgi ${quantity} som v.`,
  'record-unit-unfit': ({ unit, quantity, options, keptUnit, ...told }) =>
    `Enheten ${unit} i ${record(told.record)} passer ikke til ${quantity}; bruk ${options.join(' eller ')}, eller utelat enheten for ${keptUnit}.`,
  'name-not-allowed': ({ name, ...told }) =>
    `Navnet ${name} i ${record(told.record)} er ikke tillatt; begynn med en bokstav eller et siffer og bruk bare A–Z a–z 0–9 - : . / _`,
  'name-no-quantity': ({ name, segment, options, ...told }) =>
    `Navnet ${name} i ${record(told.record)} slutter på ${segment}, som ikke er en størrelse som er kjent her; la det, etter / eller : eller ., slutte på en av ${options.join(', ')}.`,
  'name-no-quantity/of-rule': ({ name, segment, options, ...told }) =>
    `Navnet ${name} i ${record(told.record)} slutter på ${segment}, som regelen ikke har noen størrelse for; legg det til i regelen, eller la navnet slutte på en av ${options.join(', ')}.`,
  'name-other-quantity': ({ name, segment, quantity, ...told }) =>
    `Navnet ${name} i ${record(told.record)} sier ${segment}, men emnet sier ${quantity}; send pakken til emnet uten størrelse.`,

  'topic-levels': ({ topic, site }) =>
    `Emnet ${topic} har feil antall deler; send til boardcure/${site}/sensor/<sensor> eller boardcure/${site}/sensor/<sensor>/<quantity>.`,
  'topic-sensor': ({ word }) =>
    `Sensorens navn ${word} i emnet er ikke tillatt; bruk 1 til 64 av tegnene A–Z a–z 0–9 . _ -`,
  'topic-quantity': ({ word, options }) =>
    `Emnet slutter på ${word}, som ikke er en størrelse som er kjent her; la det slutte på en av ${options.join(', ')}.`,
  'sensor-name-missing': ({ pointer, sent }, _speak, say) =>
    `Ved ${pointer}, der sensorens navn skal stå, finnes ${say(sent)}; pek på en tekst eller et tall i innholdet.`,
  'sensor-name': ({ word }) =>
    `Sensorens navn ${word} er ikke tillatt; det kan ha 1 til 64 av tegnene A–Z a–z 0–9 . _ - og trenger en bokstav eller et siffer.`,

  'time-unlike': ({ sent }, _speak, say) =>
    `Tiden er ${say(sent)}; send ISO 8601-tekst eller sekunder siden 1970.`,
  'time-unlike/iso': ({ sent }, _speak, say) =>
    `Tiden er ${say(sent)}; regelen venter ISO 8601-tekst.`,
  'time-unlike/number': ({ sent, format }, _speak, say) =>
    `Tiden er ${say(sent)}; regelen venter et tall (${times[format]}).`,
  'time-no-zone': ({ word }) =>
    `Tiden ${word} sier ikke hvilken tidssone den mener; oppgi dato og klokkeslett, og legg til Z for UTC eller en forskjell som +02:00.`,
  'time-not-iso': ({ word }) =>
    `Tiden ${word} er ikke ISO 8601; skriv den som 2026-05-04T07:30:00Z, eller send sekunder siden 1970 som tall.`,
  'time-no-such-day': ({ word }) =>
    `Tiden ${word} angir en dato eller et klokkeslett som ikke finnes.`,
  'time-beyond': ({ word, spot }, _speak, say) =>
    `Tiden ${word} ligger utenfor enhver kalender; send sekunder siden 1970 i UTC${spot === null ? '' : ` (${say(spot)})`}.`,
  'time-age': ({ word, mostAge, format }, speak) =>
    `Alderen er ${word}; den må være fra 0 til ${speak.number(mostAge)} (${times[format]}). Er det en tid siden 1970?`,

  'forecast-not-array': ({ points }) =>
    `Varselet må være en JSON-liste med høyst ${points} punkter som {"time":"2026-05-04T07:00:00Z","tempC":12.5}.`,
  'forecast-temperature': ({ point, sent, low, high }, speak, say) =>
    `tempC i punkt ${point} er ${say(sent)}; det må være et tall fra ${speak.number(low)} til ${speak.number(high)} °C.`,
  'forecast-figure': ({ point, field, sent, most }, speak, say) =>
    `${field} i punkt ${point} er ${say(sent)}; det må være et tall fra 0 til ${speak.number(most)}, eller utelates.`,

  'sensor-too-many': ({ sensor, sensors }) =>
    `Sensoren ${sensor} er ny, men ${sensors} sensorer er kjent fra før, så mange som er tillatt; øk mqtt.maxSensors hvis de er dine.`,
  'message-cut': ({ keptBytes, bytes }) =>
    `Bare de første ${keptBytes} av ${bytes} byte er husket, så den kan ikke prøves; øk discovery.maxBytes i innstillingene.`,
  'topic-not-taken': () => 'Emnet passer ikke til mønsteret, eller en tidligere regel tar det.',
};
