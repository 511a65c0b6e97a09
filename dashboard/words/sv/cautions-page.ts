import type { cautionsPage as English } from '../en/cautions-page.ts';
import { cautions } from './cautions.ts';

export const cautionsPage: typeof English = {
  title: 'Varningar',
  lead: 'De vanliga i yrket. De ersätter inte färgtillverkarens anvisningar, lokala föreskrifter eller behöriga fackmän, som går före.',
  all: [
    { ...cautions.rags, title: 'Oljiga trasor blir varma av sig själva' },
    {
      title: 'Lösningsmedelsångor',
      lines: [
        'Terpentin och andra förtunningar avger ångor som skadar och som kan brinna. De är tyngre än luft och samlas vid golvet. Byt luft, håll lågor och gnistor borta, och följ produktens säkerhetsdatablad och det lokala gränsvärdet.',
        'Programmet är inget gaslarm, och ingenting som det styr eller får värden från är byggt för explosiv miljö.',
      ],
    },
    {
      title: 'Damm',
      lines: [
        'Slipdamm av trä och färg skadar lungorna, och oljigt damm kan bli varmt som trasor. Sug upp det där det uppstår, bär mask och töm påsen utomhus.',
      ],
    },
    {
      title: 'Gammal färg',
      lines: [
        'Gammal färg kan innehålla bly eller andra gifter. Låt pröva den innan den skrapas, slipas eller bränns bort, och följ de lokala reglerna för sådant arbete.',
      ],
    },
    {
      title: 'Värmare',
      lines: [
        'Håll värmare borta från våta brädor, trasor och ångor. En gas- eller oljevärmare utan rökrör ger vatten och avgaser. Låt elektriska värmare anslutas och övervakas så som lokala föreskrifter kräver.',
      ],
    },
    {
      title: 'Vad siffrorna är',
      lines: [
        'Varje besked är en uppskattning från luft som mätts nära brädorna, inte från själva färgen. Det säger hur troligt något är; det kan inte säga att det är så. Känn innan du går vidare.',
        'Färgtillverkarens anvisningar, lokala föreskrifter och behöriga fackmän går före allt som sägs här.',
      ],
    },
  ],
};
