import type { notices as English } from '../en/notices.ts';

export const notices: typeof English = {
  title: 'Ilmoitukset',
  open: 'Avoinna',
  none: 'Mikään ei kaipaa huomiota.',
  over: 'Ohi',
  seen: 'Nähty',
  tickRags: (lockUpList) => [lockUpList, ': siihen asti se toistuu.'],
  tickRagsLink: 'Rastita lukituslistalla',
  times: {
    raised: (at) => `annettu ${at}`,
    toldAgain: (times, last) => `toistettu ${times} ×, viimeksi ${last}`,
    seen: (at) => `nähty ${at}`,
    over: (at) => `ohi ${at}`,
  },

  channels: {
    title: 'Miten niistä kerrotaan',
    by: 'Tapa',
    to: 'Minne',
    quietHours: 'Hiljaiset tunnit',
    onTheirWay: 'Matkalla',
    lastArrived: 'Viimeksi perillä',
    folded: (heading) => `${heading}:`,
    names: { mqtt: 'MQTT', webhook: 'Webhook', mail: 'Sähköposti' },
    ownBroker: 'välittäjä',
    notSetUp: 'ei asetettu',
    held: 'pidätetään',
    told: 'kerrotaan',
    waitingGivenUp: (waiting, givenUp) => `${waiting}, luovuttu: ${givenUp}`,
    noQuietHours: 'Ei hiljaisia tunteja.',
    quietFrom: (from, to, timeZone) =>
      `Hiljaista klo ${from}–${to} (${timeZone}); räteistä, höyrystä ja ylikuumenemisesta kerrotaan mihin aikaan tahansa.`,
    noDigest: 'Ei aamukoostetta.',
    digestAt: (clock) => `Aamukooste tehdään klo ${clock}.`,
    ragsRepeated: (every) =>
      `Räteistä muistutetaan ensimmäisenä päivänä toistuvasti, väli: ${every}.`,
    settings: (section) => ['Kaikki tämä on asetustiedoston osassa ', section, '.'],
  },
};
