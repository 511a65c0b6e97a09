import type { Phrases } from '../phrase.ts';
import type { LockUpSentences } from '../subject/lock-up.ts';

export const lockUp: Phrases<LockUpSentences> = {
  'lock-up-title/rags': () => 'Rätit, käsineet, paperi, siivilöintijäte, öljyinen pöly',
  'lock-up-title/vacuum-bag': () => 'Pölynimuri',
  'lock-up-title/brushes': () => 'Siveltimet',
  'lock-up-title/left-over-paint': () => 'Kannet ja ylijäänyt maali',
  'lock-up-title/waste': () => 'Jäte',
  'lock-up-title/heater': () => 'Lämmitin',
  'lock-up-title/doors': () => 'Ovet, ilma ja sähkö',
  'lock-up-title/night': () => 'Ensi yö',
  'lock-up-title/children': () => 'Lapset ja eläimet',
  'lock-up/rags': () =>
    'Ne kuumenevat itsestään ja voivat sytyttää vajan tuntien kuluttua. Kastele ne läpimäriksi ja pane vedellä täytettyyn kannelliseen metalliastiaan; tai levitä ne yhteen kerrokseen ulos, kauas rakennuksista, kunnes ne ovat jäykkiä, ja sitten samaan astiaan. Ei koskaan mytyssä, pussissa, autossa eikä sisällä.',
  'lock-up/vacuum-bag': () =>
    'Tyhjennä pussi tai säiliö ulkona vesiastiaan: öljymaalin hiontapöly kuumenee kuten rätti. Älä koskaan jätä sitä koneeseen.',
  'lock-up/brushes': () =>
    'Pyyhi ne ja ripusta raakapellavaöljyyn, sakan yläpuolelle, kannen alle. Pyyhi öljy pois ennen seuraavaa käyttöä. Se, millä ne pyyhittiin, menee rättien mukaan.',
  'lock-up/left-over-paint': () =>
    'Pyyhi reunat ja paina kannet kiinni; maalin pinnalle pantu muovikalvo estää nahkan. Nahka nostetaan pois ennen käyttöä, ei koskaan sekoiteta joukkoon; se menee rättien mukaan.',
  'lock-up/waste': () =>
    'Nestemäinen maali, öljy ja tärpätti ovat vaarallista jätettä: merkittyyn, suljettuun astiaan ja keräyspisteeseen, ei koskaan viemäriin eikä maahan.',
  'lock-up/heater': () =>
    'Mikään, missä on liekki tai hehkulanka, ei jää päälle, kun laudoista haihtuu liuotinta. Älä jätä päälle lämmitintä, jota ei ole tehty toimimaan valvomatta, äläkä mitään palavaa puolentoista metrin sisälle siitä.',
  'lock-up/doors': () =>
    'Ensimmäisinä tunteina ilma läpi; illalla kiinni, kun ulkona on kosteampaa. Valot pois märkien lautojen yltä, koneet irti pistorasiasta, tie ovelle vapaana.',
  'lock-up/night': () =>
    'Katso ensi yön alin lämpötila ja märät laudat, joihin se voi osua: peitä, lämmitä, tai kanna sisään se, minkä voit.',
  'lock-up/children': () =>
    'Maali, öljy ja tärpätti ovat lukon takana, eivät koskaan juomapulloissa, eikä kukaan, joka ei osaa lukea etikettiä, pääse märkien lautojen luo.',
  'day-coated': ({ batchName }) => `Maalattu: ${batchName}.`,
  'day-begun': ({ batchName }) => `Kerros aloitettu: ${batchName}.`,
  'day-sanded': ({ batchName }) => `Hiottu: ${batchName}.`,
  'night-cold/wet-boards': ({ lowC, errorK, limitC }, speak) =>
    `Alin noin ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}): alle ${speak.temperature(limitC, 'as-set')} kerros seisoo paikallaan.`,
  'night-dew/wet-boards': ({ marginK, limitK }, speak) =>
    `Etäisyys kastepisteeseen noin ${speak.temperatureDifference(marginK)}; vähintään ${speak.temperatureDifference(limitK, 'as-set')} riittäisi.`,
  'night-damp/wet-boards': ({ rhPercent, limitPercent }, speak) =>
    `Kosteus nousee, noin ${speak.humidity(rhPercent)}; enintään ${speak.humidity(limitPercent, 'as-set')} kävisi.`,
  'night-rain': ({ rainMm }, speak) => `Sadetta on luvassa ${speak.rain(rainMm, 1)}.`,
};
