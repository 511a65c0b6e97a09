import type { ahead as English } from '../en/ahead.ts';
import { phrase } from '../phrase.ts';
import { plural } from '../plural.ts';
import { spreadIn } from '../spread.ts';

const on = spreadIn({
  notWithinAYear: 'inte inom ett år',
  perhaps: (early) => phrase`kanske ${early}, lika gärna senare än om ett år`,
  oneDay: (day) => day,
  about: (likely, early, late) => phrase`omkring ${likely} (tidigt ${early}, sent ${late})`,
});

export const ahead: typeof English = {
  title: 'Framåt',
  anotherPlace: 'en annan plats',
  nothingWaits:
    'Ingenting väntar: inget parti har en strykning kvar. Börja ett parti, eller fråga nedan om brädor som inte är levererade än.',
  allDone: (boards, spread) =>
    phrase`${plural('sv', boards, { one: 'Den enda brädan är klar', other: 'Alla # brädor är klara' })} ${on(spread)}.`,
  batchDone: (spread) => phrase`Klart ${on(spread)}`,
  boardsInPart: (boards, part, of) => `${boards}, del ${part} av ${of}`,
  askedAbout: 'Brädorna du frågade om',
  putUp: 'Sätta upp',
  stepAt: (job, place) => `${job}, ${place}`,
  order: {
    none: (ways) =>
      `Partierna står i den ordning de tas. ${compared(ways)}; inget kunde bli klart ens ett halvt dygn tidigare.`,
    gap: (ways, days) =>
      `Partierna står i den ordning de tas. ${compared(ways)}; ingen ordning kan bli klar mer än ${plural('sv', days, { one: '# dygn', other: '# dygn' })} tidigare än den här.`,
  },
  ask: {
    title: 'Och hur många till?',
    label: 'Fler brädor, som de i det nyaste partiet',
    unit: 'brädor',
    hint: 'Att fråga antecknar ingenting.',
    fault: (least, most) => `Ett helt antal brädor från ${least} till ${most}, eller inget.`,
    button: 'När skulle de vara klara?',
  },
  winter: {
    title: 'Före vintern',
    noCoat: 'Ingen strykning är kvar.',
    by: (date) => `Börja senast ${date}: då har även en långsam strykning härdat före kylan.`,
    notThisYear:
      'Inte i år: även om du börjar nu skulle en långsam strykning inte härda före kylan. Vänta till våren.',
    noLimit: 'Ingen sista dag: där är det varmt nog hela året.',
    cannotTell:
      'Kan inte säga: det finns inga uppgifter därifrån för den årstiden, och inga månadsmedel har skrivits in.',
    coatAt: (coat, place) => `${coat} på ${place}`,
    coatOf: (coat, batches) => `${coat}: ${batches}`,
    askedAbout: 'brädorna du frågade om',
  },
  table: {
    title: 'Arbete för arbete',
    job: 'Arbete',
    where: 'Var',
    likely: 'Troligen',
    early: 'Tidigt',
    late: 'Sent',
  },
  follow: {
    title: 'I telefonens kalender',
    how: (link, address) => [
      'Prenumerera på ',
      link,
      ' med dess adress, så hålls den aktuell så länge telefonen är på det här nätet: ',
      address,
    ],
    link: 'den här kalendern',
  },
  seasons: 'Vad det blev av strykningarna hittills: säsongerna',
  restsOn: 'Vad det här bygger på',
};

function compared(ways: number): string {
  return plural('sv', ways, { one: '# sätt jämfördes', other: '# sätt jämfördes' });
}
