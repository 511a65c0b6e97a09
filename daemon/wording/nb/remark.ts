import type { Phrases } from '../phrase.ts';
import type { RemarkSentences } from '../subject/remark.ts';

export const remark: Phrases<RemarkSentences> = {
  'cure-wrinkled/wait': () =>
    'Den ble lagt på for tykt: skinnet lukket seg over myk maling. Vent til den er fast tvers gjennom, dager til uker.',
  'cure-wrinkled/scrape': () =>
    'Skrap av rynkene, slip dem ikke varme. Gammel maling kan inneholde bly: test først.',
  'cure-wrinkled/thinner': () => 'Mal igjen, tynnere, og stryk lenger ut.',
  'cure-runs/while-soft': () => 'Mens de er myke: stryk dem ut oppover.',
  'cure-runs/once-set': () =>
    'Når de har satt seg: vent til de er faste, skjær dem av med en skarp skrape, og mal flekken tynt.',
  'cure-dull/feed': () => 'Matt betyr magert: treet drakk oljen. Mat det med et tynt strøk til.',
  'cure-dull/spots-first': () => 'Bare matte flekker: mal dem først, hele flaten når de er tørre.',
  'cure-glossy/wait': () =>
    'Blank betyr feit: for mye olje ligger oppå og er myk lenge. Vent til en tommelnegl ikke setter merke.',
  'cure-glossy/rub-matt': () => 'Matt den ned før neste strøk så det fester, og mal tynnere.',
  'cure-got-wet/dry': () => 'La det tørke i luft som beveger seg, utenfor solen.',
  'cure-got-wet/look': () =>
    'Se så etter matte flekker og bleking før du går videre; mat det som er matt.',
  'cure-dew-night/dry': () => 'La det tørke av seg selv; gni ikke på våt maling.',
  'cure-dew-night/look': () =>
    'Se så etter matte flekker og bleking før du går videre; mat det som er matt.',
  'cure-bleached/cure-through': () =>
    'Vann sto på den mens den var myk. La den herde gjennom, matt den ned, og mal igjen.',
  'cure-still-standing/brush-out': () =>
    'Stryk det ut over de tørre stedene, eller tørk det av med en fille i fiberretningen, innen en time.',
  'cure-still-standing/rags': () =>
    'Legg fillene flatt ut utendørs eller legg dem under vann i en metallboks med lokk: de blir varme av seg selv.',
  'cure-wiped-off/rags': () =>
    'Oljefiller blir varme av seg selv: flatt ut utendørs, eller under vann i en boks med lokk.',
  'cure-sunk-in/fine': () => 'Slik det skal være. Gi det tid.',
  'cure-clogged/stop': () =>
    'Den er ikke gjennomtørr: stopp, ellers drar papiret malingen av. Gi den noen dager, og prøv så en kant igjen.',
  'cure-clogged/dust': () =>
    'Fukt støvet eller sug det opp, og bruk maske. Gammel maling kan inneholde bly: test først.',
  'cure-sanded/tell': () =>
    'Si i morgen om det støvet eller gikk tett: det lærer bort hva denne malingen trenger.',
  'cure-sanded/dust': () =>
    'Slipestøv mettet med olje kan ta fyr: ut med det, fuktet, i en metallboks med lokk.',
  'dew-night': ({ placeName, tempC, rhPercent }, speak) =>
    `Etter luften på ${placeName} kan det ha stått vann på det: ${speak.temperature(tempC)} og ${speak.humidity(rhPercent)} fuktighet.`,
};
