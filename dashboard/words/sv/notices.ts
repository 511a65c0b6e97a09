import type { notices as English } from '../en/notices.ts';

export const notices: typeof English = {
  title: 'Besked',
  open: 'Öppna',
  none: 'Ingenting kräver tillsyn.',
  over: 'Över',
  seen: 'Sett',
  tickRags: (lockUpList) => [lockUpList, ': tills dess kommer det igen.'],
  tickRagsLink: 'Pricka av det på stänglistan',
  times: {
    raised: (at) => `uppstod ${at}`,
    toldAgain: (times, last) => `påmint ${times} ×, senast ${last}`,
    seen: (at) => `sett ${at}`,
    over: (at) => `över ${at}`,
  },
  channels: {
    title: 'Hur de meddelas',
    by: 'Genom',
    to: 'Till',
    quietHours: 'Tysta timmar',
    onTheirWay: 'På väg',
    lastArrived: 'Senast framme',
    folded: (heading) => `${heading}:`,
    names: { mqtt: 'MQTT', webhook: 'Webhook', mail: 'E-post' },
    ownBroker: 'MQTT-servern',
    notSetUp: 'inte inställt',
    held: 'väntar',
    told: 'meddelas',
    waitingGivenUp: (waiting, givenUp) => `${waiting}, ${givenUp} uppgivna`,
    noQuietHours: 'Inga tysta timmar.',
    quietFrom: (from, to, timeZone) =>
      `Tyst från ${from} till ${to} (${timeZone}); trasor, ångor och överhettning meddelas dygnet runt.`,
    noDigest: 'Ingen sammanfattning på morgonen.',
    digestAt: (clock) => `Morgonen sammanfattas klockan ${clock}.`,
    ragsRepeated: (every) => `Raden om trasorna upprepas med ${every} emellan det första dygnet.`,
    settings: (section) => ['Allt står i inställningsfilen, avsnitt ', section, '.'],
  },
};
