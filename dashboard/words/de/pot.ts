import type { pot as English } from '../en/pot.ts';
import { plural } from '../plural.ts';

export const pot: typeof English = {
  title: 'Der Topf',
  ask: {
    which: 'Für welche Bretter',
    whichHint: 'Der nächste Anstrich ihres Plans',
    ownArea: 'Eine eigene Fläche',
    area: 'Fläche',
    spreading: 'Die Mischung reicht für',
    parts: {
      paint: 'Teile Farbe',
      rawLinseedOil: 'Teile rohes Leinöl',
      turpentine: 'Teile Terpentinöl',
    },
    width: 'Topf, Innenweite',
    topWidth: 'Oben, falls weiter',
    height: 'Innenhöhe',
    more: 'Was in den Dosen ist, Verlust, Dichte der Farbe',
    inTins: {
      paint: 'Farbe vorhanden',
      rawLinseedOil: 'Leinöl vorhanden',
      turpentine: 'Terpentinöl vorhanden',
    },
    loss: 'Verlust in Topf und Pinsel',
    weighs: 'Farbe wiegt',
    reckon: 'Rechnen',
  },
  forArea: (volume, area) => `${volume} für ${area}`,
  forCoat: (coat, volume, area) => `${coat}: ${volume} für ${area}`,
  sayWidth: 'Sagen, wie weit der Topf ist; dann stehen hier die Marken für den Rührstab.',
  pourUntil: (pots, fill, holds) => {
    const mixed = plural('de', pots, {
      one: `Ein Topf mit ${fill}`,
      other: `# gleiche Töpfe mit je ${fill}`,
    });
    const brim = holds === null ? '' : `; bis zum Rand fasst er ${holds}`;
    return `${mixed}${brim}. Gießen, bis der Stab so weit nass ist:`;
  },
  or: (volume, mass) => `${volume} oder ${mass}`,
  printStrip: 'Streifen drucken',
  printLabel: 'Etikett drucken',
  whole: {
    caption: 'Das Ganze',
    inAll: 'Insgesamt',
    volume: { metric: 'Liter', us: 'Volumen' },
    mass: { metric: 'Gramm', us: 'Gewicht' },
    density: 'Dichte',
    densityFrom: (density, from) => [`${density} `, from],
  },
  enough: (question, answer) => [question, ' ', answer],
  enoughQuestion: 'Genug in den Dosen?',
  boardsEach: {
    metric: {
      planned: (planned) => `Bretter je Liter: ${planned} nach Plan, noch keine eingetragen.`,
      soFar: (planned, soFar) => `Bretter je Liter: ${planned} nach Plan, ${soFar} bisher.`,
    },
    us: {
      planned: (planned) => `Bretter je Gallone: ${planned} nach Plan, noch keine eingetragen.`,
      soFar: (planned, soFar) => `Bretter je Gallone: ${planned} nach Plan, ${soFar} bisher.`,
    },
  },
  shopping: {
    title: 'Was für die ganze Arbeit zu kaufen ist',
    paintTins: 'Dosen Farbe',
    oilTins: 'Kanister rohes Leinöl',
    turpentineTins: 'Kanister Terpentinöl',
    sizesHint: {
      metric: 'in Litern, durch Leerzeichen getrennt',
      us: 'in Gallonen, durch Leerzeichen getrennt',
    },
    keepPrimer: 'Grundierung für Schnittenden zurückbehalten',
    makeList: 'Liste machen',
    nothing: 'Kein Anstrich steht mehr an: Es ist nichts zu kaufen.',
    what: 'Was',
    needed: 'Bedarf',
    buy: 'Kaufen',
    saySizes: 'Dosengrößen angeben',
    tins: (count, size) => `${count} × ${size}`,
    foot: (coats, loss, primer) =>
      `Für ${plural('de', coats, { one: '# Anstrich, der noch ansteht', other: '# Anstriche, die noch anstehen' })}, mit ${loss} Verlust und ${primer} Grundierung für Schnittenden. Verdünnte Farbe hält nicht ewig: kaufen, was in einer Saison verbraucht wird.`,
  },
};
