import { faultPhrases } from '../fault-phrases.ts';

export const fault = faultPhrases({
  names: {
    silent: 'Stumm',
    stuck: 'Hängt fest',
    jumps: 'Springt',
    'out-of-physics': 'Nicht möglich',
    drift: 'Driftet weg',
    'pinned-humidity': 'Feuchte am Anschlag',
    'swapped-places': 'Plätze vertauscht?',
    'low-battery': 'Batterie schwach',
    'time-wrong': 'Zeit falsch',
  },
  explanations: {
    silent:
      'Er sendet nicht mehr in seinem eigenen Takt: nach Batterie, Funk und Platz sehen. Was er vorher maß, zählt weiter; ab da gibt es nichts zu zählen.',
    stuck:
      'Er wiederholt einen Wert viel länger als je zuvor, obwohl vieles dafür spricht, dass die Luft sich geändert hat: aus- und einschalten oder ersetzen.',
    jumps:
      'Seine Werte springen, wie keine Luft es tut: nach einem losen Stecker, einem nassen Kontakt oder einem gebrochenen Draht sehen.',
    'out-of-physics':
      'Er sendet, was keine Luft hier sein kann, etwa den Wert, den manche Sensoren bei einem Fehler geben: nach den Drähten sehen, dann ersetzen.',
    drift:
      'Er hat sich von den anderen um ihn her entfernt, weiter als je zuvor: über Nacht in einer geschlossenen Kiste vergleichen, dann kalibrieren oder ersetzen.',
    'pinned-humidity':
      'Seine Feuchte steht am oberen Ende des Bereichs: Er ist nass oder kaputt. In warmer Luft trocknen; seine Temperatur zählt weiter.',
    'swapped-places':
      'Seit einem Zeitpunkt zeigt er, was ein anderer Sensor zeigte, und jener, was dieser zeigte: Wurden sie vertauscht aufgehängt? Nur ein Verdacht; wenn ja, sagen, wo sie jetzt hängen.',
    'low-battery': 'Die Batterie wechseln, bevor er verstummt. Seine Messwerte zählen weiter.',
    'time-wrong':
      'Die Zeiten, die er angibt, sind ständig um denselben Betrag falsch: seine Uhr stellen oder ihn keine senden lassen. Härtung zu falschen Zeiten wird nicht gezählt.',
  },
  lasting: {
    minutes: (minutes) => `seit ${minutes} min`,
    hours: (hours) => `seit ${hours} h`,
    days: (days) => `seit ${days} Tagen`,
  },
  standing: (sensor, name, lasting) => `Sensor ${sensor}: ${name} (${lasting}).`,
  effects: {
    none: '',
    'not-counted': 'Seine Messwerte zählen seither nicht.',
    'humidity-not-counted': 'Seine Feuchte zählt seither nicht.',
  },
  dampUnknown: (fault) =>
    `Wie feucht es ist, weiß niemand: ${fault} Vor dem Streichen selbst nachsehen.`,
  seen: {
    'seen-silent': ({ everyMs }, speak) =>
      `Sonst sendete er im Abstand von ${speak.span(everyMs)}.`,
    'seen-stuck': ({ value, quantity }, speak) =>
      `Er zeigt die ganze Zeit ${speak.bare.quantity(value, quantity)}.`,
    'seen-jumps': ({ times, minutes }) => `Er sprang ${times}-mal innerhalb von ${minutes} min.`,
    'seen-impossible': ({ value, quantity }, speak) =>
      `Er sendete ${speak.bare.quantity(value, quantity)}.`,
    'seen-drift/above': ({ difference, quantity }, speak) =>
      `Er liegt ${speak.quantityDifference(difference, quantity, 1)} weiter über den anderen als früher.`,
    'seen-drift/below': ({ difference, quantity }, speak) =>
      `Er liegt ${speak.quantityDifference(difference, quantity, 1)} weiter unter den anderen als früher.`,
    'seen-pinned': ({ rhPercent }, speak) =>
      `Er zeigt die ganze Zeit ${speak.humidity(rhPercent)}.`,
    'seen-pinned/others-drier': ({ rhPercent, othersPercent }, speak) =>
      `Er zeigt ${speak.humidity(rhPercent)}, andere um ihn her ${speak.humidity(othersPercent)}.`,
    'seen-swapped': ({ sensor, other }) =>
      `Seither zeigt ${sensor}, was vorher ${other} zeigte, und ${other}, was ${sensor} zeigte.`,
    'seen-battery': ({ percent }, speak) => `Es sind noch ${speak.percent(percent)} übrig.`,
    'seen-battery/empty-soon': ({ percent, days }, speak) =>
      `Es sind noch ${speak.percent(percent)} übrig; beim jetzigen Verlust ist sie in etwa ${days} Tagen leer.`,
    'seen-time/behind': ({ offMs }, speak) => `Seine Uhr geht ${speak.span(offMs)} nach.`,
    'seen-time/ahead': ({ offMs }, speak) => `Seine Uhr geht ${speak.span(offMs)} vor.`,
  },
});
