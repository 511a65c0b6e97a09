import type { FaultKind } from '../../contract/sensor-fault.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FaultSentences, StandingFault } from '../subject/fault.ts';

const names: Readonly<Record<FaultKind, string>> = {
  silent: 'Vaiennut',
  stuck: 'Jumissa',
  jumps: 'Hyppii',
  'out-of-physics': 'Mahdoton lukema',
  drift: 'Ajautuu',
  'pinned-humidity': 'Kosteus ylärajalla',
  'swapped-places': 'Paikat vaihtuneet?',
  'low-battery': 'Paristo vähissä',
  'time-wrong': 'Aika väärin',
};

const since = (minutes: number): string => {
  if (minutes < 90) return `kesto ${minutes} min`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `kesto ${hours} h` : `kesto ${Math.round(hours / 24)} vrk`;
};

const notCounted = ' Sen lukemia ei lasketa siitä alkaen.';
const humidityNotCounted = ' Sen kosteutta ei lasketa siitä alkaen.';

const standing =
  (kind: FaultKind, effect = '') =>
  (
    { sensor, forMinutes, seen }: StandingFault,
    _speak: Speaker,
    say: (inner: Inner) => string,
  ): string => {
    const what = typeof seen === 'string' ? seen : say(seen);
    return `Anturi ${sensor}: ${names[kind].toLowerCase()}, ${since(forMinutes)}. ${what}${effect}`;
  };

export const fault: Phrases<FaultSentences> = {
  'fault-name/silent': () => names.silent,
  'fault-name/stuck': () => names.stuck,
  'fault-name/jumps': () => names.jumps,
  'fault-name/out-of-physics': () => names['out-of-physics'],
  'fault-name/drift': () => names.drift,
  'fault-name/pinned-humidity': () => names['pinned-humidity'],
  'fault-name/swapped-places': () => names['swapped-places'],
  'fault-name/low-battery': () => names['low-battery'],
  'fault-name/time-wrong': () => names['time-wrong'],
  'fault-explanation/silent': () =>
    'Se ei enää lähetä omaan tahtiinsa: katso paristo, radioyhteys ja paikka. Aiemmin mitattu lasketaan yhä; siitä eteenpäin laskettavaa ei ole.',
  'fault-explanation/stuck': () =>
    'Se toistaa samaa lukua paljon pidempään kuin koskaan ennen, vaikka ilman on syytä olettaa muuttuneen: sammuta ja käynnistä se, tai vaihda se.',
  'fault-explanation/jumps': () =>
    'Sen luvut hyppivät, kuten mikään ilma ei tee: etsi löysä liitin, märkä kosketin tai katkennut johto.',
  'fault-explanation/out-of-physics': () =>
    'Se lähettää lukua, joka ei täällä ole mahdollinen, esimerkiksi sitä, jonka jotkin anturit antavat vikaantuessaan: katso johdot, vaihda se sitten.',
  'fault-explanation/drift': () =>
    'Se on loitontunut muista ympärillään, kauemmas kuin koskaan ennen: vertaa niitä suljetussa laatikossa yön yli, ja kalibroi tai vaihda se sitten.',
  'fault-explanation/pinned-humidity': () =>
    'Sen kosteus on mittausalueen ylärajalla: se on märkä tai rikki. Kuivata se lämpimässä ilmassa; sen lämpötila lasketaan yhä.',
  'fault-explanation/swapped-places': () =>
    'Eräästä hetkestä alkaen se näyttää samaa kuin toinen anturi ennen, ja tuo toinen samaa kuin tämä: ripustettiinko ne takaisin väärin päin? Vain epäily; jos niin on, kerro, missä ne nyt roikkuvat.',
  'fault-explanation/low-battery': () =>
    'Vaihda sen paristo ennen kuin se vaikenee. Sen lukemat lasketaan yhä.',
  'fault-explanation/time-wrong': () =>
    'Sen antamat ajat ovat koko ajan saman verran väärin: aseta sen kello, tai anna sen lähettää ilman aikaa. Väärällä ajalla kertynyttä kovettumista ei lasketa.',
  'sensor-silent': standing('silent'),
  'sensor-stuck': standing('stuck', notCounted),
  'sensor-jumps': standing('jumps', notCounted),
  'sensor-out-of-physics': standing('out-of-physics', notCounted),
  'sensor-drift': standing('drift', notCounted),
  'sensor-pinned-humidity': standing('pinned-humidity', humidityNotCounted),
  'sensor-swapped-places': standing('swapped-places'),
  'sensor-low-battery': standing('low-battery'),
  'sensor-time-wrong': standing('time-wrong', notCounted),
  'damp-unknown': (told, _speak, say) =>
    `Kukaan ei tiedä, kuinka kosteaa on: ${say(told.fault)} Katso itse ennen kuin maalaat.`,
  'seen-silent': ({ everyMs }, speak) => `Sen tavallinen lähetysväli oli ${speak.span(everyMs)}.`,
  'seen-stuck': ({ value, quantity }, speak) =>
    `Se on näyttänyt koko ajan ${speak.bare.quantity(value, quantity)}.`,
  'seen-jumps': ({ times, minutes }) => `Se hyppäsi ${times} kertaa, aika ${minutes} min.`,
  'seen-impossible': ({ value, quantity }, speak) =>
    `Se lähetti ${speak.bare.quantity(value, quantity)}.`,
  'seen-drift/above': ({ difference, quantity }, speak) =>
    `Se on ${speak.quantityDifference(difference, quantity, 1)} enemmän muiden yläpuolella kuin ennen.`,
  'seen-drift/below': ({ difference, quantity }, speak) =>
    `Se on ${speak.quantityDifference(difference, quantity, 1)} enemmän muiden alapuolella kuin ennen.`,
  'seen-pinned': ({ rhPercent }, speak) =>
    `Se on näyttänyt koko ajan ${speak.humidity(rhPercent)}.`,
  'seen-pinned/others-drier': ({ rhPercent, othersPercent }, speak) =>
    `Se näyttää ${speak.humidity(rhPercent)}, muut sen ympärillä ${speak.humidity(othersPercent)}.`,
  'seen-swapped': ({ sensor, other }) =>
    `Siitä lähtien ${sensor} näyttää samaa kuin ${other} ennen, ja ${other} samaa kuin ${sensor}.`,
  'seen-battery': ({ percent }, speak) => `Jäljellä on ${speak.percent(percent)}.`,
  'seen-battery/empty-soon': ({ percent, days }, speak) =>
    `Jäljellä on ${speak.percent(percent)}, ja varaus hupenee niin, että paristo on tyhjä noin ${days} vuorokauden kuluttua.`,
  'seen-time/behind': ({ offMs }, speak) => `Sen kello jätättää ${speak.span(offMs)}.`,
  'seen-time/ahead': ({ offMs }, speak) => `Sen kello edistää ${speak.span(offMs)}.`,
};
