import type { cautions as English } from '../en/cautions.ts';

export const cautions: typeof English = {
  link: 'Varningar',
  short:
    'Oljiga trasor kan självantända. Alla siffror är uppskattningar; färgtillverkarens anvisningar och lokala regler går före.',
  wall: 'Oljiga trasor kan självantända. Siffrorna är uppskattningar.',
  ragsLine:
    'Oljiga trasor från i dag? Lägg dem utomhus, plant i ett enda lager, eller under vatten i en plåtburk med lock.',
  rags: {
    title: 'Trasorna, nu genast',
    lines: [
      'Trasor, svampar och papper med linolja på blir varma av sig själva och kan ta eld flera timmar senare. Lämna dem aldrig i en hög, i en ficka eller i en papperskorg.',
      'Lägg ut dem plant, i ett enda lager, utomhus på något som inte brinner, tills de är styva; eller lägg dem under vatten i en plåtburk med lock.',
      'Lämna dem sedan som avfall så som de lokala reglerna säger.',
    ],
  },
};
