import type { Phrases } from '../phrase.ts';
import type { RemarkSentences } from '../subject/remark.ts';

export const remark: Phrases<RemarkSentences> = {
  'cure-wrinkled/wait': () =>
    'Den lades på för tjockt: skinnet slöt sig över mjuk färg. Vänta tills den är fast rakt igenom, dagar till veckor.',
  'cure-wrinkled/scrape': () =>
    'Skrapa av rynkorna, slipa dem inte heta. Gammal färg kan innehålla bly: pröva först.',
  'cure-wrinkled/thinner': () => 'Stryk igen, tunnare, och stryk ut längre.',
  'cure-runs/while-soft': () => 'Medan de är mjuka: stryk ut dem uppåt.',
  'cure-runs/once-set': () =>
    'När de har satt sig: vänta tills de är fasta, skär av dem med en vass skrapa, och stryk fläcken tunt.',
  'cure-dull/feed': () =>
    'Matt betyder mager: träet drack oljan. Mata det med en tunn strykning till.',
  'cure-dull/spots-first': () =>
    'Bara matta fläckar: stryk dem först, hela ytan när de har torkat.',
  'cure-glossy/wait': () =>
    'Blank betyder fet: för mycket olja ligger ovanpå och är mjuk länge. Vänta tills en tumnagel inte lämnar märke.',
  'cure-glossy/rub-matt': () =>
    'Matta ner den före nästa strykning så att den fäster, och stryk tunnare.',
  'cure-got-wet/dry': () => 'Låt det torka i luft som rör sig, utan sol.',
  'cure-got-wet/look': () =>
    'Leta sedan efter matta fläckar och blekning innan du går vidare; mata det som är matt.',
  'cure-dew-night/dry': () => 'Låt det torka av sig självt; gnid inte på våt färg.',
  'cure-dew-night/look': () =>
    'Leta sedan efter matta fläckar och blekning innan du går vidare; mata det som är matt.',
  'cure-bleached/cure-through': () =>
    'Vatten stod på den medan den var mjuk. Låt den härda igenom, matta ner den och stryk igen.',
  'cure-still-standing/brush-out': () =>
    'Stryk ut det över torra ställen, eller torka av det med en trasa längs fibrerna, inom en timme.',
  'cure-still-standing/rags': () =>
    'Lägg ut trasorna plant utomhus eller lägg dem under vatten i en plåtburk med lock: de blir varma av sig själva.',
  'cure-wiped-off/rags': () =>
    'Oljiga trasor blir varma av sig själva: ut plant utomhus, eller under vatten i en burk med lock.',
  'cure-sunk-in/fine': () => 'Som det ska vara. Ge det sin tid.',
  'cure-clogged/stop': () =>
    'Den är inte genomtorr: sluta, annars drar papperet av färgen. Ge den dagar, pröva sedan en kant igen.',
  'cure-clogged/dust': () =>
    'Fukta dammet eller sug upp det, och bär mask. Gammal färg kan innehålla bly: pröva först.',
  'cure-sanded/tell': () =>
    'Säg i morgon om det dammade eller satte igen: det lär vad den här färgen behöver.',
  'cure-sanded/dust': () =>
    'Slipdamm indränkt med olja kan ta eld: ut med det, fuktat, i en plåtburk med lock.',
  'dew-night': ({ placeName, tempC, rhPercent }, speak) =>
    `Enligt luften på ${placeName} kan vatten ha stått på den: ${speak.temperature(tempC)} och ${speak.humidity(rhPercent)} fuktighet.`,
};
