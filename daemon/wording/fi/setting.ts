import type { Phrases } from '../phrase.ts';
import type { SettingSentences } from '../subject/setting.ts';

export const setting: Phrases<SettingSentences> = {
  'setting-unknown': ({ name }) => `Asetusta ${name} ei ole.`,
  'setting-by-hand': ({ name }) =>
    `Asetus ${name} muutetaan tietokoneella olevassa asetustiedostossa, ei sivulla.`,
  'setting-given': ({ name, other }) =>
    `Asetus ${name} annettiin käynnistyksessä (${other}), ja se menee sivulla valitun edelle.`,
  'chosen-damaged': ({ found }) =>
    `Asetussivulla valittua ei voi lukea: ${found}. Sen sijaan voimassa ovat asetustiedosto ja oletusarvot. Valitse sivulla uudelleen; vioittunut tiedosto jää silloin uuden viereen.`,
  'settings-unwritten': ({ found }) =>
    `Muutosta ei voitu kirjoittaa datakansioon: ${found}. Mitään ei muutettu.`,
  'settings-nothing-asked': () => 'Pyynnössä ei mainita yhtään asetusta.',
};
