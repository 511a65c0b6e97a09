import type { notices as English } from '../en/notices.ts';

export const notices: typeof English = {
  title: 'Meldungen',
  open: 'Offen',
  none: 'Nichts verlangt Aufmerksamkeit.',
  over: 'Vorbei',
  seen: 'Gesehen',
  tickRags: (lockUpList) => [lockUpList, ': Bis dahin kommt es wieder.'],
  tickRagsLink: 'Auf der Feierabendliste abhaken',
  times: {
    raised: (at) => `gemeldet ${at}`,
    toldAgain: (times, last) => `${times} × wieder gemeldet, zuletzt ${last}`,
    seen: (at) => `gesehen ${at}`,
    over: (at) => `vorbei ${at}`,
  },

  channels: {
    title: 'Wie sie gemeldet werden',
    by: 'Über',
    to: 'An',
    quietHours: 'Ruhezeit',
    onTheirWay: 'Unterwegs',
    lastArrived: 'Zuletzt angekommen',
    folded: (heading) => `${heading}:`,
    names: { mqtt: 'MQTT', webhook: 'Webhook', mail: 'E-Mail' },
    ownBroker: 'den Broker',
    notSetUp: 'nicht eingerichtet',
    held: 'zurückgehalten',
    told: 'gemeldet',
    waitingGivenUp: (waiting, givenUp) => `${waiting}, ${givenUp} aufgegeben`,
    noQuietHours: 'Keine Ruhezeit.',
    quietFrom: (from, to, timeZone) =>
      `Ruhe von ${from} bis ${to} (${timeZone}); Lappen, Dämpfe und Überhitzung werden zu jeder Stunde gemeldet.`,
    noDigest: 'Keine Zusammenfassung am Morgen.',
    digestAt: (clock) => `Der Morgen wird um ${clock} zusammengefasst.`,
    ragsRepeated: (every) =>
      `An die Lappen wird am ersten Tag immer wieder erinnert, Abstand: ${every}.`,
    settings: (section) => ['Das alles steht in der Einstellungsdatei, Abschnitt ', section, '.'],
  },
};
