import type { air as English } from '../en/air.ts';

export const air: typeof English = {
  flows: {
    good: 'hyvä',
    poor: 'huono',
    'cannot-tell': 'ei tiedetä',
  },
  poor: {
    few: 'Tunkkaista: avaa, ellei ulkona ole kosteampaa.',
    stagnant: 'Ilma seisoo lautojen välissä: päästä ilmaa läpi.',
    damp: 'Kosteaa tuntikausia: vaihda ilmaa, kun ulkona on kuivempaa.',
    other: 'Huono ilma. Vaihda sitä; ei puhallinta märkään pintaan.',
  },
};
