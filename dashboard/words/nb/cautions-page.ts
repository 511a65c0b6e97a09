import type { cautionsPage as English } from '../en/cautions-page.ts';
import { cautions } from './cautions.ts';

export const cautionsPage: typeof English = {
  title: 'Advarsler',
  lead: 'De vanlige i faget. De erstatter ikke malingsprodusentens anvisninger, lokale forskrifter eller autoriserte fagfolk, som går foran.',
  all: [
    { ...cautions.rags, title: 'Oljefiller blir varme av seg selv' },
    {
      title: 'Løsemiddeldamp',
      lines: [
        'Terpentin og andre tynnere avgir damp som skader, og som kan brenne. Den er tyngre enn luft og samler seg lavt. Skift luft, hold flammer og gnister borte, og følg produktets sikkerhetsdatablad og den lokale grenseverdien.',
        'Programmet er ingen gassalarm, og ingenting som det styrer eller får verdier fra, er bygd for eksplosjonsfarlig atmosfære.',
      ],
    },
    {
      title: 'Støv',
      lines: [
        'Slipestøv av tre og maling skader lungene, og oljete støv kan bli varmt som filler. Sug det opp der det oppstår, bruk maske, og tøm posen utendørs.',
      ],
    },
    {
      title: 'Gammel maling',
      lines: [
        'Gammel maling kan inneholde bly eller andre giftstoffer. Få den undersøkt før den skrapes, slipes eller brennes av, og følg de lokale reglene for slikt arbeid.',
      ],
    },
    {
      title: 'Varmeovner',
      lines: [
        'Hold varmeovner borte fra våte bord, filler og damp. En gass- eller oljeovn uten røykrør avgir vann og eksos. La elektriske ovner kobles til og holdes under oppsyn slik lokale forskrifter krever.',
      ],
    },
    {
      title: 'Hva tallene er',
      lines: [
        'Hver vurdering er et anslag ut fra luft som er målt nær bordene, ikke fra selve malingen. Den sier hvor sannsynlig noe er; den kan ikke si at det er slik. Kjenn etter før du går videre.',
        'Malingsprodusentens anvisninger, lokale forskrifter og autoriserte fagfolk går foran alt som sies her.',
      ],
    },
  ],
};
