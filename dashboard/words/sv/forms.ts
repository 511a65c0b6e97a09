import type { forms as English } from '../en/forms.ts';

export const forms: typeof English = {
  when: {
    justNow: 'Nyss',
    another: 'Vid en annan tid',
    dateAndTime: 'Datum och tid',
    incomplete: 'behöver ett datum, med årtal i fyra siffror, och ett klockslag',
  },
  closed: (choosePin) => [
    'Ändringar tas för närvarande bara emot från själva datorn: öppna den här sidan där, eller ',
    choosePin,
    '.',
  ],
  choosePin: 'välj en PIN-kod',
  besideFields: {
    title: 'Något stämmer inte',
    look: 'Se på de markerade fälten: vad som är fel står under vart och ett.',
  },
  problems: {
    AWAY: {
      title: 'Programmet svarar inte',
      detail: 'Inget svar kom, så det är kanske inte antecknat.',
      doThis: 'Se efter om datorn i boden är på och ansluten till nätet, och skicka det igen.',
    },
    UNREADABLE: {
      title: 'Svaret gick inte att läsa',
      detail: 'Något annat än programmet svarade.',
      doThis: 'Kontrollera sidans adress.',
    },
    NOT_KEPT: {
      title: 'Inte skickat, och den här enheten kan inte spara något',
      detail:
        'Programmet svarar inte, och den här webbläsaren låter ingen sida spara något: i ett privat fönster, eller för att enheten är full.',
      doThis: 'Låt sidan vara öppen som den är, och skicka det igen när nätet är tillbaka.',
    },
  },
};
