import { faultPhrases } from '../fault-phrases.ts';

export const fault = faultPhrases({
  names: {
    silent: 'Taus',
    stuck: 'Henger fast',
    jumps: 'Hopper',
    'out-of-physics': 'Umulig verdi',
    drift: 'Driver unna',
    'pinned-humidity': 'Fuktigheten henger på topp',
    'swapped-places': 'Byttet plass?',
    'low-battery': 'Lite batteri',
    'time-wrong': 'Feil tid',
  },
  explanations: {
    silent:
      'Den sender ikke lenger i sin egen takt: se på batteriet, radioen og plasseringen. Det den målte før, teller fortsatt; etter det er det ingenting å telle.',
    stuck:
      'Den gjentar ett tall mye lenger enn den noen gang har gjort, enda det er grunn til å tro at luften endret seg: slå den av og på, eller bytt den ut.',
    jumps:
      'Tallene hopper slik ingen luft gjør: se etter et løst støpsel, en våt kontakt eller en brukket ledning.',
    'out-of-physics':
      'Den sender det ingen luft her kan være, for eksempel tallet noen sensorer gir når de svikter: se på ledningene, og bytt den så ut.',
    drift:
      'Den har forlatt de andre rundt seg, lenger enn den noen gang var fra dem: sammenlign dem i en lukket boks over natten, og kalibrer eller bytt den så ut.',
    'pinned-humidity':
      'Fuktigheten står øverst i måleområdet: den er våt eller ødelagt. Tørk den i varm luft; temperaturen teller fortsatt.',
    'swapped-places':
      'Siden et tidspunkt viser den det en annen sensor viste, og den andre det denne viste: ble de hengt tilbake på hverandres plass? Bare en mistanke; stemmer den, si hvor de henger nå.',
    'low-battery': 'Bytt batteriet før den blir taus. Målingene fra den teller fortsatt.',
    'time-wrong':
      'Tidene den oppgir, er hele tiden like mye feil: still klokken dens, eller la den ikke sende noen tid. Herding som er samlet på feil tid, telles ikke.',
  },
  lasting: {
    minutes: (minutes) => `i ${minutes} min`,
    hours: (hours) => `i ${hours} h`,
    days: (days) => `i ${days} døgn`,
  },
  standing: (sensor, name, lasting) => `Sensor ${sensor}: ${name.toLowerCase()} ${lasting}.`,
  effects: {
    none: '',
    'not-counted': 'Målingene fra den telles ikke fra da av.',
    'humidity-not-counted': 'Fuktigheten fra den telles ikke fra da av.',
  },
  dampUnknown: (fault) => `Hvor fuktig det er, vet ingen: ${fault} Se etter selv før du maler.`,
  seen: {
    'seen-silent': ({ everyMs }, speak) =>
      `Den pleide å sende med ${speak.span(everyMs)} mellomrom.`,
    'seen-stuck': ({ value, quantity }, speak) =>
      `Den har vist ${speak.bare.quantity(value, quantity)} hele tiden.`,
    'seen-jumps': ({ times, minutes }) => `Den hoppet ${times} ganger på ${minutes} min.`,
    'seen-impossible': ({ value, quantity }, speak) =>
      `Den sendte ${speak.bare.quantity(value, quantity)}.`,
    'seen-drift/above': ({ difference, quantity }, speak) =>
      `Den ligger ${speak.quantityDifference(difference, quantity, 1)} lenger over de andre enn før.`,
    'seen-drift/below': ({ difference, quantity }, speak) =>
      `Den ligger ${speak.quantityDifference(difference, quantity, 1)} lenger under de andre enn før.`,
    'seen-pinned': ({ rhPercent }, speak) =>
      `Den har vist ${speak.humidity(rhPercent)} hele tiden.`,
    'seen-pinned/others-drier': ({ rhPercent, othersPercent }, speak) =>
      `Den viser ${speak.humidity(rhPercent)}, andre rundt den ${speak.humidity(othersPercent)}.`,
    'seen-swapped': ({ sensor, other }) =>
      `Fra da av viser ${sensor} det ${other} viste før, og ${other} det ${sensor} viste.`,
    'seen-battery': ({ percent }, speak) => `Den har ${speak.percent(percent)} igjen.`,
    'seen-battery/empty-soon': ({ percent, days }, speak) =>
      `Den har ${speak.percent(percent)} igjen og taper så mye at den er tom om omtrent ${days} døgn.`,
    'seen-time/behind': ({ offMs }, speak) => `Klokken dens går ${speak.span(offMs)} etter.`,
    'seen-time/ahead': ({ offMs }, speak) => `Klokken dens går ${speak.span(offMs)} foran.`,
  },
});
