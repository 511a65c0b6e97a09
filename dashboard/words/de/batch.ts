import type { batch as English } from '../en/batch.ts';
import { plural } from '../plural.ts';

const boards = (count: number) => plural('de', count, { one: '# Brett', other: '# Bretter' });

export const batch: typeof English = {
  cannotShow: 'Diese Partie lässt sich nicht zeigen',
  verdict: 'Urteil',
  stepByStep: 'Schritt für Schritt streichen',
  printCard: 'Die Karte fürs Gestell drucken',
  report: 'Der Bericht dieser Partie, zum Drucken oder Aufheben',
  facts: {
    at: (place) => place,
    boards: (count, species) => `${boards(count)}, ${species}`,
    closed: 'abgeschlossen',
    recomputing: 'späte Messwerte werden eingerechnet',
  },
  hero: {
    notSure: 'Nicht mehr gewiss',
    spoken: (sign, job) => `${sign} (${job})`,
    coat: (number, all, coat, stage) => `Anstrich ${number} von ${all}, ${coat}: ${stage}.`,
    faces: (faces) => `Gestrichen: ${faces}.`,
    lastBoard: (moment) => ['Letztes Brett: ', moment, '.'],
    sum: (degreeHours, hours, at) => `${degreeHours}, so viel wie ${hours} bei ${at}.`,
    gathered: (degreeHours, needed) =>
      `${degreeHours} gesammelt; zum Überstreichen sind wahrscheinlich ${needed} nötig.`,
  },
  jobs: {
    title: 'Was mit den Brettern geschehen darf',
    odds: (odds) => `Chance: ${odds}`,
    how: 'Wie man es anfasst',
    exact: 'Genaue Zeiten',
    oddsColumn: 'Chance',
    by: 'Bis',
    needs: 'Braucht',
    oneInTen: '1 von 10',
    oneInTwo: '1 von 2',
    nineInTen: '9 von 10',
    unknown: 'unbekannt oder vorbei',
    footnote:
      'Die Chance gilt für das langsamste Zehntel der Bretter. Bis Fingerproben Besseres gelehrt haben, ist der Bedarf einer Arbeit eine Anfangsannahme.',
  },
  helps: 'Was helfen würde',
  air: {
    title: (place) => `Die Luft: ${place}`,
    now: (temperature, humidity, dewPoint, word) => [
      `${temperature}, ${humidity}, Taupunkt ${dewPoint}. Luft: `,
      word,
      '.',
    ],
    apart: (difference) =>
      `Die Sensoren hier liegen ${difference} auseinander; der kälteste zählt.`,
    apartInHumidity: (difference) =>
      `Die Sensoren hier liegen in der Feuchte ${difference} auseinander; für den Tau zählt der feuchteste.`,
  },
  coats: {
    title: 'Anstriche',
    name: (number, all, coat) => `${number} von ${all}: ${coat}`,
    used: (volume) => `${volume} verbraucht`,
    tin: (tin) => `Dose ${tin}`,
    lastBoard: 'Letztes Brett',
    stage: 'Stufe',
    sum: 'Summe',
    lowToHigh: 'Tief bis hoch',
    range: (low, high) => `${low} bis ${high}`,
    hoursAt: (temperature) => `Bei ${temperature}`,
    arrhenius: 'Nach Arrhenius',
    measured: 'Gemessen',
    gaps: 'Ohne Messwerte',
    needs: 'Überstreichen braucht wohl',
    model: 'Modell',
    models: {
      'nurse-saul': (datum, gap) =>
        `Temperatursumme, Nullpunkt ${datum}, Lücken über ${gap} nicht gezählt`,
      arrhenius: (gap) => `Arrhenius, Lücken über ${gap} nicht gezählt`,
    },
    byMistake: 'Aus Versehen eingetragen',
    byMistakeHow:
      'Aus Versehen eingetragen? Es bleibt erhalten und wird als zurückgenommen gekennzeichnet.',
    leave: 'So lassen',
  },
  log: {
    title: 'Was eingetragen wurde',
    nothing: 'Noch nichts. Eine Fingerprobe lehrt mehr als jede Tabelle.',
    moved: (place) => `Umgelegt: ${place}`,
    remark: (remark, text) => `${remark}: ${text}`,
    meter: (quantity, figures) => `${quantity}: ${figures}`,
    passed: (job, sum, on, felt) => `Bereit ${job} bei ${sum}, angefasst ${on}: ${felt}`,
    failed: (job, sum, on, felt) => `Noch nicht bereit ${job} bei ${sum}, angefasst ${on}: ${felt}`,
    on: { board: 'an einem Brett', offcut: 'am Probestück' },
  },
};
