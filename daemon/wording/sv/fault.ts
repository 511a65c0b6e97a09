import { faultPhrases } from '../fault-phrases.ts';

export const fault = faultPhrases({
  names: {
    silent: 'Tyst',
    stuck: 'Fastnat',
    jumps: 'Hoppar',
    'out-of-physics': 'Omöjligt värde',
    drift: 'Driver iväg',
    'pinned-humidity': 'Fuktigheten fastnat i topp',
    'swapped-places': 'Bytta platser?',
    'low-battery': 'Svagt batteri',
    'time-wrong': 'Fel tid',
  },
  explanations: {
    silent:
      'Den skickar inte längre i sin egen takt: titta på batteriet, radion och platsen. Det den mätte förut räknas fortfarande; från och med då finns inget att räkna.',
    stuck:
      'Den upprepar ett tal mycket längre än den någonsin gjort, fast det finns skäl att tro att luften ändrades: slå av och på den, eller byt den.',
    jumps:
      'Dess tal hoppar som ingen luft gör: leta efter en lös kontakt, fukt i kontakten eller en bruten ledning.',
    'out-of-physics':
      'Den skickar vad ingen luft här kan vara, till exempel det tal som vissa givare ger när de går sönder: titta på ledningarna, byt den sedan.',
    drift:
      'Den har glidit ifrån de andra omkring sig, längre än den någonsin varit: jämför dem i en sluten låda över natten, kalibrera eller byt den sedan.',
    'pinned-humidity':
      'Dess fuktighet står vid områdets övre gräns: den är våt eller trasig. Torka den i varm luft; dess temperatur räknas fortfarande.',
    'swapped-places':
      'Sedan en stund visar den som en annan givare gjorde, och den andra som denna: hängdes de tillbaka på varandras plats? Bara en misstanke; om det stämmer, säg var de hänger nu.',
    'low-battery': 'Byt batteri innan den tystnar. Dess mätvärden räknas fortfarande.',
    'time-wrong':
      'Tiderna den anger är hela tiden fel lika mycket: ställ dess klocka, eller låt den inte skicka någon tid. Härdning som samlats på fel tid räknas inte.',
  },
  lasting: {
    minutes: (minutes) => `i ${minutes} min`,
    hours: (hours) => `i ${hours} h`,
    days: (days) => `i ${days} dygn`,
  },
  standing: (sensor, name, lasting) => `Givare ${sensor}: ${name.toLowerCase()} ${lasting}.`,
  effects: {
    none: '',
    'not-counted': 'Dess mätvärden räknas inte sedan dess.',
    'humidity-not-counted': 'Dess fuktighet räknas inte sedan dess.',
  },
  dampUnknown: (fault) => `Hur fuktigt det är vet ingen: ${fault} Se efter själv innan du stryker.`,
  seen: {
    'seen-silent': ({ everyMs }, speak) => `Den brukade skicka med ${speak.span(everyMs)} emellan.`,
    'seen-stuck': ({ value, quantity }, speak) =>
      `Den har visat ${speak.bare.quantity(value, quantity)} hela tiden.`,
    'seen-jumps': ({ times, minutes }) => `Den hoppade ${times} gånger på ${minutes} min.`,
    'seen-impossible': ({ value, quantity }, speak) =>
      `Den skickade ${speak.bare.quantity(value, quantity)}.`,
    'seen-drift/above': ({ difference, quantity }, speak) =>
      `Den ligger ${speak.quantityDifference(difference, quantity, 1)} längre över de andra än förut.`,
    'seen-drift/below': ({ difference, quantity }, speak) =>
      `Den ligger ${speak.quantityDifference(difference, quantity, 1)} längre under de andra än förut.`,
    'seen-pinned': ({ rhPercent }, speak) =>
      `Den har visat ${speak.humidity(rhPercent)} hela tiden.`,
    'seen-pinned/others-drier': ({ rhPercent, othersPercent }, speak) =>
      `Den visar ${speak.humidity(rhPercent)}, andra omkring den ${speak.humidity(othersPercent)}.`,
    'seen-swapped': ({ sensor, other }) =>
      `Sedan dess visar ${sensor} som ${other} gjorde förut, och ${other} som ${sensor} gjorde.`,
    'seen-battery': ({ percent }, speak) => `Den har ${speak.percent(percent)} kvar.`,
    'seen-battery/empty-soon': ({ percent, days }, speak) =>
      `Den har ${speak.percent(percent)} kvar och minskar så att den är tom om ungefär ${days} dygn.`,
    'seen-time/behind': ({ offMs }, speak) => `Dess klocka går ${speak.span(offMs)} efter.`,
    'seen-time/ahead': ({ offMs }, speak) => `Dess klocka går ${speak.span(offMs)} före.`,
  },
});
