import type { pot as English } from '../en/pot.ts';
import { plural } from '../plural.ts';

export const pot: typeof English = {
  title: 'Burken',
  ask: {
    which: 'Till vilka brädor',
    whichHint: 'Nästa strykning i deras plan',
    ownArea: 'En egen yta',
    area: 'Yta',
    spreading: 'Blandningen räcker till',
    parts: {
      paint: 'Delar färg',
      rawLinseedOil: 'Delar rå linolja',
      turpentine: 'Delar terpentin',
    },
    width: 'Burkens innermått',
    topWidth: 'Upptill, om vidare',
    height: 'Höjd invändigt',
    more: 'Vad som finns i burkarna, spill, färgens densitet',
    inTins: {
      paint: 'Färg som finns',
      rawLinseedOil: 'Rå linolja som finns',
      turpentine: 'Terpentin som finns',
    },
    loss: 'Spill i burk och pensel',
    weighs: 'Färgen väger',
    reckon: 'Räkna',
  },
  forArea: (volume, area) => `${volume} till ${area}`,
  forCoat: (coat, volume, area) => `${coat}: ${volume} till ${area}`,
  sayWidth: 'Säg hur vid burken är, så står märkena för pinnen här.',
  pourUntil: (pots, fill, holds) => {
    const mixed = plural('sv', pots, {
      one: `En burk med ${fill}`,
      other: `# burkar, alla lika, med ${fill}`,
    });
    const brim = holds === null ? '' : `; den rymmer ${holds}`;
    return `${mixed}${brim}. Häll tills pinnen är våt upp till`;
  },
  or: (volume, mass) => `${volume} eller ${mass}`,
  printStrip: 'Skriv ut remsan',
  printLabel: 'Skriv ut etiketten',
  whole: {
    caption: 'Alltsammans',
    inAll: 'Totalt',
    volume: { metric: 'Liter', us: 'Volym' },
    mass: { metric: 'Gram', us: 'Vikt' },
    density: 'Densitet',
    densityFrom: (density, from) => [`${density} `, from],
  },
  enough: (question, answer) => [question, ' ', answer],
  enoughQuestion: 'Räcker det i burkarna?',
  boardsEach: {
    metric: {
      planned: (planned) => `Brädor per liter: ${planned} enligt planen, inga antecknade än.`,
      soFar: (planned, soFar) => `Brädor per liter: ${planned} enligt planen, ${soFar} hittills.`,
    },
    us: {
      planned: (planned) => `Brädor per gallon: ${planned} enligt planen, inga antecknade än.`,
      soFar: (planned, soFar) => `Brädor per gallon: ${planned} enligt planen, ${soFar} hittills.`,
    },
  },
  shopping: {
    title: 'Vad som ska köpas till hela arbetet',
    paintTins: 'Burkar färg',
    oilTins: 'Dunkar rå linolja',
    turpentineTins: 'Dunkar terpentin',
    sizesHint: { metric: 'i liter, med mellanslag', us: 'i gallon, med mellanslag' },
    keepPrimer: 'Grundfärg att spara till kapade ändar',
    makeList: 'Gör listan',
    nothing: 'Ingen strykning är kvar: det finns inget att köpa.',
    what: 'Vad',
    needed: 'Behövs',
    buy: 'Köp',
    saySizes: 'säg burkarnas storlekar',
    tins: (count, size) => `${count} × ${size}`,
    foot: (coats, loss, primer) =>
      `Till ${plural('sv', coats, { one: '# strykning', other: '# strykningar' })} som är kvar, med ${loss} spill och ${primer} grundfärg sparad till kapade ändar. Förtunnad färg håller inte hur länge som helst: köp så mycket som går åt på en säsong.`,
  },
};
