import type { notices as English } from '../en/notices.ts';

export const notices: typeof English = {
  title: 'Varsler',
  open: 'Åpne',
  none: 'Ingenting krever tilsyn.',
  over: 'Over',
  seen: 'Sett',
  tickRags: (lockUpList) => [lockUpList, ': til da kommer det igjen.'],
  tickRagsLink: 'Kryss det av på stengelisten',
  times: {
    raised: (at) => `oppsto ${at}`,
    toldAgain: (times, last) => `gjentatt ${times} ×, sist ${last}`,
    seen: (at) => `sett ${at}`,
    over: (at) => `over ${at}`,
  },
  channels: {
    title: 'Hvordan de meldes',
    by: 'Med',
    to: 'Til',
    quietHours: 'Stille timer',
    onTheirWay: 'Underveis',
    lastArrived: 'Sist fremme',
    folded: (heading) => `${heading}:`,
    names: { mqtt: 'MQTT', webhook: 'Webhook', mail: 'E-post' },
    ownBroker: 'MQTT-tjeneren',
    notSetUp: 'ikke satt opp',
    held: 'venter',
    told: 'meldes',
    waitingGivenUp: (waiting, givenUp) => `${waiting}, ${givenUp} gitt opp`,
    noQuietHours: 'Ingen stille timer.',
    quietFrom: (from, to, timeZone) =>
      `Stille fra ${from} til ${to} (${timeZone}); filler, damp og overoppheting meldes hele døgnet.`,
    noDigest: 'Ingen oppsummering om morgenen.',
    digestAt: (clock) => `Morgenen oppsummeres klokken ${clock}.`,
    ragsRepeated: (every) => `Linjen om fillene gjentas med ${every} mellom det første døgnet.`,
    settings: (section) => ['Alt står i innstillingsfilen, avsnitt ', section, '.'],
  },
};
