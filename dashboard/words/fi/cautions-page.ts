import type { Caution } from '../caution.ts';
import type { cautionsPage as English } from '../en/cautions-page.ts';
import { cautions } from './cautions.ts';

const all: readonly Caution[] = [
  { ...cautions.rags, title: 'Öljyiset rätit lämpenevät itsestään' },
  {
    title: 'Liuotinhöyry',
    lines: [
      'Tärpätistä ja muista ohenteista haihtuu höyryä, joka on haitallista ja voi syttyä. Se on ilmaa raskaampaa ja kerääntyy alas. Vaihda ilmaa, pidä avotuli ja kipinät kaukana, ja noudata tuotteen ohjetta ja paikallista altistumisrajaa.',
      'Tämä ohjelma ei ole kaasuhälytin, eikä mitään sen ohjaamaa tai sille tietoja antavaa laitetta ole tehty räjähdysvaaralliseen tilaan.',
    ],
  },
  {
    title: 'Pöly',
    lines: [
      'Puun ja maalin hiontapöly vahingoittaa keuhkoja, ja öljyinen pöly voi kuumeta kuten rätit. Kerää se talteen syntypaikalla, käytä hengityssuojainta ja tyhjennä pölypussi ulkona.',
    ],
  },
  {
    title: 'Vanha maali',
    lines: [
      'Vanhassa maalissa voi olla lyijyä tai muita myrkkyjä. Tutkituta se ennen kuin sitä kaavitaan, hiotaan tai poltetaan pois, ja noudata tällaista työtä koskevia paikallisia määräyksiä.',
    ],
  },
  {
    title: 'Lämmittimet',
    lines: [
      'Pidä lämmittimet kaukana märistä laudoista, räteistä ja höyrystä. Hormiton kaasu- tai öljylämmitin tuottaa vettä ja käryä. Sähkölämmittimien kytkennässä ja valvonnassa noudatetaan paikallisia määräyksiä.',
    ],
  },
  {
    title: 'Mitä luvut ovat',
    lines: [
      'Jokainen arvio perustuu lautojen lähellä mitattuun ilmaan, ei itse maaliin. Se kertoo, kuinka todennäköistä jokin on; se ei voi sanoa, että niin on. Tunnustele ennen kuin jatkat.',
      'Maalinvalmistajan ohje, paikalliset määräykset ja luvanvarainen ammattityö ovat kaiken tässä sanotun edellä.',
    ],
  },
];

export const cautionsPage: typeof English = {
  title: 'Varoitukset',
  lead: 'Alan tavanomaiset varoitukset. Ne eivät korvaa maalinvalmistajan ohjetta, paikallisia määräyksiä eikä luvanvaraista ammattityötä, jotka ovat etusijalla.',
  all,
};
