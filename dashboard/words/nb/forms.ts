import type { forms as English } from '../en/forms.ts';

export const forms: typeof English = {
  when: {
    justNow: 'Nettopp',
    another: 'På et annet tidspunkt',
    dateAndTime: 'Dato og klokkeslett',
    incomplete: 'trenger en dato, med årstall på fire sifre, og et klokkeslett',
  },
  closed: (choosePin) => [
    'Endringer tas foreløpig bare imot fra selve datamaskinen: åpne denne siden der, eller ',
    choosePin,
    '.',
  ],
  choosePin: 'velg en PIN-kode',
  besideFields: {
    title: 'Noe stemmer ikke',
    look: 'Se på de markerte feltene: hva som er feil, står under hvert av dem.',
  },
  problems: {
    AWAY: {
      title: 'Programmet svarer ikke',
      detail: 'Det kom ikke noe svar, så det er kanskje ikke notert.',
      doThis: 'Se etter om datamaskinen i boden er på og koblet til nettet, og send det igjen.',
    },
    UNREADABLE: {
      title: 'Svaret kunne ikke leses',
      detail: 'Noe annet enn programmet svarte.',
      doThis: 'Kontroller adressen til denne siden.',
    },
    NOT_KEPT: {
      title: 'Ikke sendt, og denne enheten kan ikke lagre noe',
      detail:
        'Programmet svarer ikke, og denne nettleseren lar ingen side lagre noe: i et privat vindu, eller fordi enheten er full.',
      doThis: 'La siden stå åpen som den er, og send det igjen når nettet er tilbake.',
    },
  },
};
