import type { pot as English } from '../en/pot.ts';
import { plural } from '../plural.ts';

export const pot: typeof English = {
  title: 'Spannet',
  ask: {
    which: 'Til hvilke bord',
    whichHint: 'Neste strøk i planen deres',
    ownArea: 'Et eget areal',
    area: 'Areal',
    spreading: 'Blandingen rekker til',
    parts: {
      paint: 'Deler maling',
      rawLinseedOil: 'Deler rå linolje',
      turpentine: 'Deler terpentin',
    },
    width: 'Spannets indre bredde',
    topWidth: 'Øverst, om videre',
    height: 'Indre høyde',
    more: 'Hva som er i boksene, svinn, malingens densitet',
    inTins: {
      paint: 'Maling som finnes',
      rawLinseedOil: 'Rå linolje som finnes',
      turpentine: 'Terpentin som finnes',
    },
    loss: 'Svinn i spann og pensel',
    weighs: 'Malingen veier',
    reckon: 'Regn ut',
  },
  forArea: (volume, area) => `${volume} til ${area}`,
  forCoat: (coat, volume, area) => `${coat}: ${volume} til ${area}`,
  sayWidth: 'Si hvor vidt spannet er, så står merkene til rørepinnen her.',
  pourUntil: (pots, fill, holds) => {
    const mixed = plural('nb', pots, {
      one: `Ett spann med ${fill}`,
      other: `# spann, alle like, med ${fill}`,
    });
    const brim = holds === null ? '' : `; det rommer ${holds}`;
    return `${mixed}${brim}. Hell til pinnen er våt opp til`;
  },
  or: (volume, mass) => `${volume} eller ${mass}`,
  printStrip: 'Skriv ut remsen',
  printLabel: 'Skriv ut etiketten',
  whole: {
    caption: 'Det hele',
    inAll: 'I alt',
    volume: { metric: 'Liter', us: 'Volum' },
    mass: { metric: 'Gram', us: 'Vekt' },
    density: 'Densitet',
    densityFrom: (density, from) => [`${density} `, from],
  },
  enough: (question, answer) => [question, ' ', answer],
  enoughQuestion: 'Nok i boksene?',
  boardsEach: {
    metric: {
      planned: (planned) => `Bord per liter: ${planned} etter planen, ingen notert ennå.`,
      soFar: (planned, soFar) => `Bord per liter: ${planned} etter planen, ${soFar} så langt.`,
    },
    us: {
      planned: (planned) => `Bord per gallon: ${planned} etter planen, ingen notert ennå.`,
      soFar: (planned, soFar) => `Bord per gallon: ${planned} etter planen, ${soFar} så langt.`,
    },
  },
  shopping: {
    title: 'Hva som må kjøpes til hele jobben',
    paintTins: 'Bokser med maling',
    oilTins: 'Kanner med rå linolje',
    turpentineTins: 'Kanner med terpentin',
    sizesHint: { metric: 'i liter, med mellomrom', us: 'i gallon, med mellomrom' },
    keepPrimer: 'Grunning spart til kappede ender',
    makeList: 'Lag listen',
    nothing: 'Ikke noe strøk gjenstår: det er ingenting å kjøpe.',
    what: 'Hva',
    needed: 'Trengs',
    buy: 'Kjøp',
    saySizes: 'si størrelsene på boksene',
    tins: (count, size) => `${count} × ${size}`,
    foot: (coats, loss, primer) =>
      `Til ${plural('nb', coats, { one: '# strøk', other: '# strøk' })} som gjenstår, med ${loss} svinn og ${primer} grunning spart til kappede ender. Fortynnet maling holder ikke evig: kjøp det en sesong bruker.`,
  },
};
