import type { Gate } from '../../contract/gate.ts';
import type { Phrases } from '../phrase.ts';
import type { WorkSentences } from '../subject/work.ts';
import { gateNames } from './gate-names.ts';

/** What can be done where the test passes. */
const doable: Readonly<Record<Gate, string>> = {
  turn: 'laudat voi kääntää',
  stack: 'laudat voi pinota',
  mount: 'laudat voi asentaa',
  sand: 'laudat voi hioa',
  recoat: 'uuden kerroksen voi maalata',
};

export const work: Phrases<WorkSentences> = {
  'step/edges': () => 'Reunat, kun laudat ovat pinossa pystyssä',
  'step/back': () => 'Takapuoli, ohueksi siveltynä',
  'step/face': () => 'Etupuoli, syiden suuntaan siveltynä',
  'step/ends': () => 'Päätypuu, kunnolla kylläiseksi',
  'step/ends-again': () => 'Päätypuu toisen kerran, kun ensimmäinen on imeytynyt',
  'step/rags': () => 'Rätit levällään ulkona tai vedessä kannellisessa astiassa',
  'mounting/fresh-cuts': () => 'Jokainen tuore sahauspinta pohjamaalattu samana päivänä',
  'mounting/notches': () => 'Lovet ja poratut reiät pohjamaalattu samana päivänä',
  'mounting/nail-heads': () => 'Naulankannat pohjamaalattu samana päivänä',
  'mounting/end-grain-twice': () =>
    'Päätypuu maalattu kahdesti, toisen kerran, kun ensimmäinen on imeytynyt',
  'look/soaks-in': () =>
    'Etsi, mikä yhä kiiltää: sivele se tasaiseksi tai pyyhi pois. Tiheän puun päälle jäänyt öljy pysyy viikkoja tahmeana. Kerro, onko se imeytynyt.',
  'look/film': () =>
    'Katso vastavaloon, näkyykö valumia ja paksuja reunoja, ja sivele ne tasaisiksi, kun ne ovat pehmeitä.',
  'touch-offcut': () => 'Ensin koepalasta, joka maalattiin näiden lautojen kanssa.',
  'touch-low-in-shade': () => 'Sitten alhaalta varjosta, missä se kuivuu viimeiseksi.',
  'touch-under-lap': () => 'Limityksen tai reunan alta alhaalta.',
  'touch-bottom-shelf': () => 'Sitten alimmalta hyllyltä, telineen keskeltä, missä ilma seisoo.',
  'touch-fat-edge': () => 'Paksulta reunalta, johon maalia on kertynyt.',
  'touch-knot': () => 'Oksan kohdalta: maali kuivuu pihkan päällä viimeiseksi.',
  'touch-lying-side': () => 'Siltä puolelta, joka tulee seuraavaa lautaa vasten.',
  'outcome-where': () => 'Sinun ei tarvitse kävellä: kerro, miten hionta sujui.',
  'outcome-feel': () => 'Pölysikö paperi, vai rullasiko se maalia ja tukkeutui?',
  'outcome-dusted': () => 'Se pölysi: tämä maali ei vaadi enempää kuin mitä sillä oli hiottaessa.',
  'outcome-clogged': () => 'Se tukki: tämä maali vaatii enemmän kuin mitä sillä oli hiottaessa.',
  'if-passed/as-planned': ({ gate }) => `Jos se onnistuu, ${doable[gate]} suunnitelman mukaan.`,
  'if-passed/now': ({ gate }) => `Jos se onnistuu, ${doable[gate]} heti odottamatta.`,
  'if-failed': ({ gate }) =>
    `Jos se ei onnistu, ${gateNames[gate]} odottaa, eikä mikään mene pilalle.`,
};
