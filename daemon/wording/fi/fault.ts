import { faultPhrases } from '../fault-phrases.ts';

export const fault = faultPhrases({
  names: {
    silent: 'Vaiennut',
    stuck: 'Jumissa',
    jumps: 'Hyppii',
    'out-of-physics': 'Mahdoton lukema',
    drift: 'Ajautuu',
    'pinned-humidity': 'Kosteus ylärajalla',
    'swapped-places': 'Paikat vaihtuneet?',
    'low-battery': 'Paristo vähissä',
    'time-wrong': 'Aika väärin',
  },
  explanations: {
    silent:
      'Se ei enää lähetä omaan tahtiinsa: katso paristo, radioyhteys ja paikka. Aiemmin mitattu lasketaan yhä; siitä eteenpäin laskettavaa ei ole.',
    stuck:
      'Se toistaa samaa lukua paljon pidempään kuin koskaan ennen, vaikka ilman on syytä olettaa muuttuneen: sammuta ja käynnistä se, tai vaihda se.',
    jumps:
      'Sen luvut hyppivät, kuten mikään ilma ei tee: etsi löysä liitin, märkä kosketin tai katkennut johto.',
    'out-of-physics':
      'Se lähettää lukua, joka ei täällä ole mahdollinen, esimerkiksi sitä, jonka jotkin anturit antavat vikaantuessaan: katso johdot, vaihda se sitten.',
    drift:
      'Se on loitontunut muista ympärillään, kauemmas kuin koskaan ennen: vertaa niitä suljetussa laatikossa yön yli, ja kalibroi tai vaihda se sitten.',
    'pinned-humidity':
      'Sen kosteus on mittausalueen ylärajalla: se on märkä tai rikki. Kuivata se lämpimässä ilmassa; sen lämpötila lasketaan yhä.',
    'swapped-places':
      'Eräästä hetkestä alkaen se näyttää samaa kuin toinen anturi ennen, ja tuo toinen samaa kuin tämä: ripustettiinko ne takaisin väärin päin? Vain epäily; jos niin on, kerro, missä ne nyt roikkuvat.',
    'low-battery': 'Vaihda sen paristo ennen kuin se vaikenee. Sen lukemat lasketaan yhä.',
    'time-wrong':
      'Sen antamat ajat ovat koko ajan saman verran väärin: aseta sen kello, tai anna sen lähettää ilman aikaa. Väärällä ajalla kertynyttä kovettumista ei lasketa.',
  },
  lasting: {
    minutes: (minutes) => `kesto ${minutes} min`,
    hours: (hours) => `kesto ${hours} h`,
    days: (days) => `kesto ${days} vrk`,
  },
  standing: (sensor, name, lasting) => `Anturi ${sensor}: ${name.toLowerCase()}, ${lasting}.`,
  effects: {
    none: '',
    'not-counted': 'Sen lukemia ei lasketa siitä alkaen.',
    'humidity-not-counted': 'Sen kosteutta ei lasketa siitä alkaen.',
  },
  dampUnknown: (fault) =>
    `Kukaan ei tiedä, kuinka kosteaa on: ${fault} Katso itse ennen kuin maalaat.`,
  seen: {
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
  },
});
