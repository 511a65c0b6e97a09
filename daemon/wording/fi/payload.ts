import type { RuleTimeFormat } from '../../contract/topic-rule.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { OtherThing, PayloadSentences } from '../subject/payload.ts';
import { quantityNames } from './detail.ts';

const otherThings: Readonly<Record<OtherThing, string>> = {
  voltage: 'jännitettä',
  current: 'virtaa',
  power: 'tehoa tai energiaa',
  pressure: 'painetta',
  light: 'valoa',
  time: 'aikaa',
  length: 'pituutta',
  'absolute-humidity': 'absoluuttista kosteutta',
  signal: 'signaalin tasoa',
  temperature: 'lämpötilaa',
  resistance: 'vastusta',
  'share-of-air': 'osuutta ilmasta',
  share: 'prosentteja tai osuutta',
  milliohm: 'ohmin tuhannesosaa, tuskin miljoonaa',
};

const times: Readonly<Record<RuleTimeFormat, string>> = {
  any: 'mikä tahansa',
  iso: 'ISO 8601',
  'epoch-s': 'sekunteja vuodesta 1970',
  'epoch-ms': 'millisekunteja vuodesta 1970',
  'age-s': 'sekunteja ennen lähettämistä',
  'age-ms': 'millisekunteja ennen lähettämistä',
};

const inRecord = (number: number) => `SenML-paketin tietueessa ${number}`;
const Record = (number: number) => `SenML-paketin tietue ${number}`;
const unitAt = (unit: string, spot: Inner | null, say: (inner: Inner) => string) =>
  spot === null ? `Yksikkö ${unit}` : `Yksikkö ${unit} ${say(spot)}`;
const notJson = 'Sisältö alkaa kuin JSON, mutta sitä ei voi lukea JSONina';
const notCbor = 'Sisältö alkaa kuin CBOR, mutta sitä ei voi lukea CBORina';
const whole = 'Tarkista, että se lähetetään kokonaan ja tavuina.';

export const payload: Phrases<PayloadSentences> = {
  'spot/payload': () => 'sisällössä',
  'spot/object': () => 'JSON-oliossa',
  'spot/top': () => 'ylimmällä tasolla',
  'spot/at': ({ pointer }) => `kohdassa ${pointer}`,
  'spot/value-top': () => 'ylimmän tason arvossa',
  'spot/value-at': ({ pointer }) => `arvossa kohdassa ${pointer}`,
  'spot/record': (told) => inRecord(told.record),
  'thing/payload': () => 'Sisältö',
  'thing/value-top': () => 'Ylimmän tason arvo',
  'thing/value-at': ({ pointer }) => `Kohdan ${pointer} arvo`,
  'sent/array': () => 'luettelo',
  'sent/object': () => 'olio',
  'sent/nothing': () => 'ei mitään',

  'payload-large': ({ bytes, mostBytes }) =>
    `Sisällössä on ${bytes} tavua, enemmän kuin ne ${mostBytes}, jotka katsotaan; lähetä yhdessä viestissä vähemmän tietueita.`,
  'payload-not-text': () =>
    'Sisältö ei ole UTF-8-tekstiä eikä CBOR-luettelo; lähetä luku tekstinä, JSON tai SenML-paketti.',
  'payload-empty': () => 'Sisältö on tyhjä; lähetä luku tekstinä tai JSON.',
  'payload-not-pack': ({ sent }, _speak, say) =>
    `Sisältönä on ${say(sent)}; sääntö odottaa SenML-pakettia eli luetteloa tietueista.`,
  'payload-is-cbor/json': () =>
    'Sisältö on CBOR, mutta sääntö odottaa JSONia; anna säännön odottaa SenML:ää.',
  'payload-is-cbor/text': () =>
    'Sisältö on CBOR, mutta sääntö odottaa tekstiä; anna säännön odottaa SenML:ää.',
  'json-broken/not-finite': ({ options }) =>
    `${notJson}; JSON ei tunne arvoja ${options.join(', ')}, joten jätä arvo pois, kun sitä ei ole.`,
  'json-broken/not-whole': () =>
    `${notJson}; tarkista, että se on kokonainen ja sulut ja lainausmerkit on suljettu.`,
  'cbor-broken': ({ because }) => `${notCbor}: ”${because}”. ${whole}`,
  'cbor-broken/too-deep': () => `${notCbor}: liian monta sisäkkäistä tasoa. ${whole}`,
  'cbor-broken/fraction': () =>
    `${notCbor}: desimaalimurtoluku ei ole kaksi kokonaislukua. ${whole}`,
  'cbor-not-array': () => 'CBOR-sisältö ei ole luettelo; SenML-paketti on luettelo tietueista.',
  'quantity-not-said/text': ({ word }) =>
    `Sisältö ${word} ei kerro, mitä mitattiin; lisää suure aiheeseen tai lähetä SenML-paketti.`,
  'quantity-not-said/object': () =>
    'Sisältö on yksi JSON-olio aiheessa, jossa ei ole suuretta; lisää suure aiheeseen tai lähetä SenML-paketti eli luettelo tietueista.',
  'object-without-value': () => 'JSON-oliossa ei ole arvoa; lähetä luku nimellä value.',
  'object-value-not-number': ({ sent }, _speak, say) =>
    `JSON-olion arvona on ${say(sent)}; lähetä itse luku.`,
  'object-value-not-number/quoted': ({ sent }, _speak, say) =>
    `JSON-olion arvona on ${say(sent)}; lähetä itse luku ilman lainausmerkkejä.`,
  'nothing-at-pointers': ({ pointers, more }) =>
    `Sääntö etsii arvoja näistä kohdista, mutta niissä ei ole mitään: ${pointers.join(', ')}${more > 0 ? ' ja niin edelleen' : ''}; korjaa sääntö tai jätä tämä aihe siitä pois.`,
  'value-not-number': ({ spot, sent }, _speak, say) =>
    `Arvona ${say(spot)} on ${say(sent)}; anna säännön osoittaa lukuun tai tekstiin, jossa on luku.`,
  'value-not-finite': ({ spot, word }, _speak, say) =>
    `Arvo ${say(spot)} on ${word}, joka ei ole äärellinen luku; älä lähetä mitään, kun anturi ei anna lukemaa.`,
  'value-beyond': ({ spot, value, quantity, low, high }, speak, say) =>
    `Arvo ${say(spot)} on ${speak.quantity(value, quantity)}, mutta ${quantityNames[quantity]} on ${speak.bare.quantity(low, quantity)} – ${speak.quantity(high, quantity)}; tarkista anturi, johdot ja yksikkö.`,
  'value-beyond/share': ({ spot, value, quantity, low, high }, speak, say) =>
    `Arvo ${say(spot)} on ${speak.quantity(value, quantity)}, mutta ${quantityNames[quantity]} on ${speak.bare.quantity(low, quantity)} – ${speak.quantity(high, quantity)}; tarkista anturi, johdot ja yksikkö (SenML:ssä ”/” ja ”%” ovat osuuksia väliltä 0–1).`,
  'number-not-finite': ({ what, word }, _speak, say) =>
    `${say(what)} on ${word}, joka ei ole äärellinen luku; älä lähetä mitään, kun anturi ei anna lukemaa.`,
  'not-decimal/quoted': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} ei ole desimaaliluku; lähetä luku ilman lainausmerkkejä.`,
  'not-decimal/grouped': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} ei ole desimaaliluku; lähetä se yhdellä desimaalipisteellä ilman merkkejä tuhansien välissä.`,
  'not-decimal/trailing': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} ei ole pelkkä desimaaliluku; lähetä luku ja sen perässä enintään yksikkö.`,
  'not-decimal/other': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} ei ole desimaaliluku; lähetä luku kuten 21.5 tai JSON kuten {"value":21.5}.`,
  'number-ambiguous': ({ what, word, asPoint, asThousands }, _speak, say) =>
    `${say(what)} ${word} voi tarkoittaa ${asPoint} tai ${asThousands}; lähetä se desimaalipisteellä tai ilman pilkkua.`,
  'unit-unfit': ({ unit, spot, quantity, options }, _speak, say) =>
    `${unitAt(unit, spot, say)} on tuntematon eikä sovi suureelle (${quantityNames[quantity]}); käytä: ${options.join(' tai ')}.`,
  'unit-unfit/other': ({ unit, spot, quantity, options, measures }, _speak, say) =>
    `${unitAt(unit, spot, say)} tarkoittaa ${otherThings[measures]} eikä sovi suureelle (${quantityNames[quantity]}); käytä: ${options.join(' tai ')}.`,

  'pack-empty': () => 'SenML-paketti on tyhjä luettelo; lähetä vähintään yksi tietue.',
  'pack-large': ({ records, mostRecords }) =>
    `SenML-paketissa on ${records} tietuetta; lähetä yhdessä viestissä enintään ${mostRecords}.`,
  'pack-without-value': () =>
    'SenML-paketissa on vain peruskenttiä eikä yhtään arvoa; anna luku kentässä v.',
  'pack-version': ({ sent, version, ...told }, _speak, say) =>
    `SenML-versiona bver tietueessa ${told.record} on ${say(sent)}, jota täällä ei ymmärretä; lähetä versio ${version} tai jätä bver pois.`,
  'pack-versions': ({ version, earlier, ...told }) =>
    `SenML-versio bver tietueessa ${told.record} on ${version}, mutta aiempi tietue sanoo ${earlier}; anna koko paketille yksi versio.`,
  'base-field': ({ field, fieldType, sent, ...told }, _speak, say) =>
    `Peruskentässä ${field} ${inRecord(told.record)} on ${say(sent)}, vaikka siinä pitää olla ${fieldType === 'number' ? 'luku' : 'tekstiä'}; tätä tietuetta ja siihen nojaavia ei voi lukea.`,
  'must-understand': ({ field, ...told }) =>
    `Kenttä ${field} ${inRecord(told.record)} pitää lukijan ymmärtää, eikä sitä täällä tunneta; lähetä lukema ilman sitä.`,
  'record-not-object': ({ sent, ...told }, _speak, say) =>
    `${Record(told.record)}: siinä on ${say(sent)}; jokainen tietue on olio kuten {"n":"air-temperature","u":"Cel","v":21.5}.`,
  'record-name': ({ sent, ...told }, _speak, say) =>
    `Nimenä n ${inRecord(told.record)} on ${say(sent)}; sen pitää olla tekstiä.`,
  'record-unit': ({ sent, ...told }, _speak, say) =>
    `Yksikkönä u ${inRecord(told.record)} on ${say(sent)}; sen pitää olla tekstiä kuten ”Cel”.`,
  'record-time': ({ sent, ...told }, _speak, say) =>
    `Aikana t ${inRecord(told.record)} on ${say(sent)}; SenML:ssä aika on sekuntien määrä.`,
  'record-values': ({ fields, ...told }) =>
    `${Record(told.record)}: siinä on ${fields.join(' ja ')}; yhdessä tietueessa on yksi arvo.`,
  'record-without-value': (told) =>
    `${Record(told.record)}: siinä ei ole arvoa; anna luku kentässä v tai jätä tietue pois.`,
  'record-value': ({ sent, ...told }, _speak, say) =>
    `Arvona v ${inRecord(told.record)} on ${say(sent)}; lähetä itse luku ilman lainausmerkkejä.`,
  'record-without-number': ({ name, quantity, ...told }) =>
    `${Record(told.record)}, nimeltään ${name}: siinä ei ole lukua; anna ${quantity} kentässä v.`,
  'record-unit-unfit': ({ unit, quantity, options, keptUnit, ...told }) =>
    `Yksikkö ${unit} ${inRecord(told.record)} ei sovi suureelle ${quantity}; käytä: ${options.join(' tai ')}, tai jätä yksikkö pois, jolloin se on ${keptUnit}.`,
  'name-not-allowed': ({ name, ...told }) =>
    `Nimi ${name} ${inRecord(told.record)} ei ole sallittu; aloita kirjaimella tai numerolla ja käytä vain merkkejä A–Z a–z 0–9 - : . / _`,
  'name-no-quantity': ({ name, segment, options, ...told }) =>
    `Nimen ${name} lopussa ${inRecord(told.record)} on ${segment}, joka ei ole täällä tunnettu suure; pane merkin / tai : tai . jälkeen jokin näistä: ${options.join(', ')}.`,
  'name-no-quantity/of-rule': ({ name, segment, options, ...told }) =>
    `Nimen ${name} lopussa ${inRecord(told.record)} on ${segment}, jolle säännössä ei ole suuretta; lisää se sääntöön tai pane nimen loppuun jokin näistä: ${options.join(', ')}.`,
  'name-other-quantity': ({ name, segment, quantity, ...told }) =>
    `Nimi ${name} ${inRecord(told.record)} sanoo ${segment}, mutta aihe sanoo ${quantity}; lähetä paketti aiheeseen, jossa ei ole suuretta.`,

  'topic-levels': ({ topic, site }) =>
    `Aiheessa ${topic} on väärä määrä osia; lähetä aiheeseen boardcure/${site}/sensor/<sensor> tai boardcure/${site}/sensor/<sensor>/<quantity>.`,
  'topic-sensor': ({ word }) =>
    `Anturin nimi ${word} aiheessa ei ole sallittu; käytä 1–64 merkkiä näistä: A–Z a–z 0–9 . _ -`,
  'topic-quantity': ({ word, options }) =>
    `Aiheen lopussa on ${word}, joka ei ole täällä tunnettu suure; pane sen loppuun jokin näistä: ${options.join(', ')}.`,
  'sensor-name-missing': ({ pointer, sent }, _speak, say) =>
    `Kohdassa ${pointer}, jossa anturin nimen pitäisi olla, on: ${say(sent)}; osoita sisällössä olevaan tekstiin tai lukuun.`,
  'sensor-name': ({ word }) =>
    `Anturin nimi ${word} ei ole sallittu; siinä saa olla 1–64 merkkiä näistä: A–Z a–z 0–9 . _ - ja siinä pitää olla kirjain tai numero.`,

  'time-unlike': ({ sent }, _speak, say) =>
    `Aikana on ${say(sent)}; lähetä ISO 8601 -tekstiä tai sekunteja vuodesta 1970.`,
  'time-unlike/iso': ({ sent }, _speak, say) =>
    `Aikana on ${say(sent)}; sääntö odottaa ISO 8601 -tekstiä.`,
  'time-unlike/number': ({ sent, format }, _speak, say) =>
    `Aikana on ${say(sent)}; sääntö odottaa lukua (${times[format]}).`,
  'time-no-zone': ({ word }) =>
    `Aika ${word} ei kerro, mitä aikavyöhykettä se tarkoittaa; anna päivä ja kellonaika ja lisää Z, kun se on UTC, tai ero kuten +02:00.`,
  'time-not-iso': ({ word }) =>
    `Aika ${word} ei ole ISO 8601; kirjoita se kuten 2026-05-04T07:30:00Z tai lähetä sekunteja vuodesta 1970 lukuna.`,
  'time-no-such-day': ({ word }) =>
    `Aika ${word} nimeää päivän tai kellonajan, jota ei ole olemassa.`,
  'time-beyond': ({ word, spot }, _speak, say) =>
    `Aika ${word} on minkä tahansa kalenterin ulkopuolella; lähetä sekunteja vuodesta 1970 UTC-aikana${spot === null ? '' : ` (${say(spot)})`}.`,
  'time-age': ({ word, mostAge, format }, speak) =>
    `Ikä on ${word}; sen pitää olla 0–${speak.number(mostAge)} (${times[format]}). Onko se aika vuodesta 1970?`,

  'forecast-not-array': ({ points }) =>
    `Ennusteen pitää olla JSON-luettelo, jossa on enintään ${points} kohtaa kuten {"time":"2026-05-04T07:00:00Z","tempC":12.5}.`,
  'forecast-temperature': ({ point, sent, low, high }, speak, say) =>
    `Kohdan ${point} tempC: siinä on ${say(sent)}; sen pitää olla luku väliltä ${speak.number(low)} – ${speak.number(high)} °C.`,
  'forecast-figure': ({ point, field, sent, most }, speak, say) =>
    `Kohdan ${point} ${field}: siinä on ${say(sent)}; sen pitää olla luku väliltä 0–${speak.number(most)}, tai jätä se pois.`,

  'sensor-too-many': ({ sensor, sensors }) =>
    `Anturi ${sensor} on uusi, mutta antureita tunnetaan jo ${sensors}, niin monta kuin sallitaan; suurenna asetusta mqtt.maxSensors, jos ne ovat omiasi.`,
  'message-cut': ({ keptBytes, bytes }) =>
    `Viestin ${bytes} tavusta muistetaan vain ensimmäiset ${keptBytes}, joten sitä ei voi kokeilla; suurenna asetusta discovery.maxBytes.`,
  'topic-not-taken': () => 'Aihe ei sovi kaavaan, tai aiempi sääntö ottaa sen.',
};
