import type { more as English } from '../en/more.ts';

export const more: typeof English = {
  title: 'Mer',
  doors: {
    records: { name: 'Anteckningar', says: 'Allt som antecknats, om alla partier, att söka i' },
    season: { name: 'Säsongerna', says: 'Vad det blev av strykningarna hittills' },
    settings: {
      name: 'Inställningar',
      says: 'Vad som är inställt, varifrån det kommer och hur det ändras',
    },
    topics: {
      name: 'Givare av annat slag',
      says: 'Meddelanden som ingen känner än, och reglerna som gör dem till mätvärden',
    },
    firstRun: {
      name: 'Första stegen',
      says: 'Den ledda vägen genom inställningen, och en simulerad bod att prova på',
    },
    cautions: { name: 'Varningar', says: 'Trasor, ångor, damm, bly och värmare' },
    api: { name: 'API', says: 'Alla adresser, för den som skriver program' },
  },
};
