import { names } from '../../../daemon/wording/de/thing-names.ts';
import { capitalized } from '../capitalized.ts';
import type { chart as English } from '../en/chart.ts';
import { plural } from '../plural.ts';

const { quantities } = names;
const named = capitalized(quantities);

export const chart: typeof English = {
  panels: {
    temperature: 'Temperatur',
    humidity: named['relative-humidity'],
    moisture: named['wood-moisture'],
    gas: named['carbon-dioxide'],
    changes: 'Luftwechsel',
    sum: 'Gradstunden',
  },
  lines: {
    air: 'Luft',
    dew: 'Taupunkt',
    humidity: 'Feuchte',
    moisture: 'Holzfeuchte',
    gas: named['carbon-dioxide'],
    changes: 'Luftwechsel',
    sum: 'Summe',
  },
  perHour: 'je Stunde',
  changesNote:
    'Geschätzt aus dem Tag vor jedem Punkt, mit einem 90-%-Intervall. Kein Punkt: Es lässt sich nicht sagen.',
  sumNote:
    'Bänder: was eine Arbeit braucht, früh bis spät. Der Fächer: die kommende Summe, von dem, was eine von zehn Zukünften übertrifft, bis zu dem, was neun von zehn erreichen. Der Balken an einer Linie: von wann bis wann das Urteil diese Arbeit erwartet.',
  bandNote: (length) =>
    `Jeder Punkt steht für ${length}; das blasse Band reicht vom tiefsten zum höchsten Messwert.`,
  ahead: { early: '1 von 10', likely: 'wahrscheinlich', late: '9 von 10' },
  stretch: {
    minutes: (count) => plural('de', count, { one: '# Minute', other: '# Minuten' }),
    hours: (count) => plural('de', count, { one: '# Stunde', other: '# Stunden' }),
    days: (count) => plural('de', count, { one: '# Tag', other: '# Tage' }),
    seconds: (count) => plural('de', count, { one: '# Sekunde', other: '# Sekunden' }),
  },
  marks: {
    title: 'Marken',
    kinds: {
      coat: 'Anstrich fertig',
      passed: 'angefasst: bereit',
      failed: 'angefasst: zu früh',
      move: 'umgelegt',
      remark: 'Bemerkung',
      notice: 'Meldung',
    },
    coat: (coat, batch) => `${batch}: ${coat} fertig`,
    passed: (job, batch) => `${batch}: angefasst, bereit ${job}`,
    failed: (job, batch) => `${batch}: angefasst, noch nicht bereit ${job}`,
    move: (batch, place) => `${batch}: umgelegt, jetzt ${place}`,
    remark: (remark, batch) => `${batch}: ${remark}`,
    remarkWith: (remark, text, batch) => `${batch}: ${remark}: ${text}`,
  },
  byHand: {
    name: 'Von Hand',
    board: (board, figure) => `Brett ${board} ${figure}`,
    measured: (of, moment, boards) => `${of}, ${moment}: ${boards}`,
    caption: 'Holzfeuchte, von Hand gemessen',
    where: 'Partie oder Ort',
    boards: 'Was das Messgerät zeigte',
  },
  cursor: {
    line: (name, figure) => `${name}: ${figure}`,
    figures: (figures) => `: ${figures}`,
    nothing: 'zu dieser Zeit keine Messwerte',
  },
  spoken: {
    panel: (panel, from, to, lines) => `${panel} von ${from} bis ${to}. ${lines}`,
    line: (line, last, low, high) =>
      `${line}: zuletzt ${last}, am tiefsten ${low}, am höchsten ${high}.`,
    nothing: (line) => `${line}: keine Messwerte.`,
  },
  controls: {
    title: (chart) => `Genauer ansehen: ${chart}`,
    closer: 'Näher',
    wider: 'Weiter',
    earlier: 'Früher',
    later: 'Später',
    all: 'Alles',
    how: 'Entlangziehen verschiebt; mit zwei Fingern oder mit Strg und dem Mausrad näher heran. Mit der Tastatur: + und −, die Pfeile, Pos1 für alles; Umschalt mit den Pfeilen bewegt den Zeiger, Escape nimmt ihn weg.',
  },
  from: 'Von',
  to: 'Bis',
  nothing: 'In dieser Zeit keine Messwerte, also nichts zu zeichnen.',
  notRead: 'Die Kurven ließen sich nicht lesen. Sie werden erneut angefragt.',
  table: {
    open: 'Dasselbe als Tabelle',
    caption: (from, to) => `Tiefster, mittlerer und höchster Wert von ${from} bis ${to}`,
    when: 'Wann',
    head: (name, unit) => `${name}, ${unit}`,
    marksCaption: 'Was getan, gefühlt, gesehen und gemeldet wurde',
    what: 'Was',
    noMarks: 'In dieser Zeit wurde nichts eingetragen.',
  },
  files: {
    csv: 'Als Tabelle (CSV)',
    png: 'Als Bild (PNG)',
    note: 'Die Datei enthält, was zu sehen ist: metrische Einheiten, Zeiten in UTC.',
    time: 'Zeit (UTC)',
    low: (name, unit) => `${name}, tiefster Wert (${unit})`,
    mean: (name, unit) => `${name}, Mittel (${unit})`,
    high: (name, unit) => `${name}, höchster Wert (${unit})`,
    one: (name, unit) => `${name} (${unit})`,
    early: (name, unit) => `${name} kommend, früh (${unit})`,
    likely: (name, unit) => `${name} kommend, wahrscheinlich (${unit})`,
    late: (name, unit) => `${name} kommend, spät (${unit})`,
    names: {
      air: quantities['air-temperature'],
      dew: 'Taupunkt',
      humidity: quantities['relative-humidity'],
      moisture: quantities['wood-moisture'],
      gas: quantities['carbon-dioxide'],
      changes: 'Luftwechsel',
      sum: 'Gradstunden',
      counted: 'Gradstunden, die zählen',
    },
    marks: 'Marken',
    byHand: (of, board) => `Holzfeuchte von Hand, ${of}, Brett ${board} (%)`,
    span: (from, to) => `${from} bis ${to}`,
  },
  batch: {
    title: 'Kurven dieses Anstrichs',
    which: 'Welcher Anstrich',
  },
  air: {
    title: 'Luft',
    titleOf: (place) => `Die Luft: ${place}`,
    lead: 'Jeder Platz oder Sensor, über einen Tag oder eine Jahreszeit.',
    place: 'Platz',
    sensor: 'Sensor',
    allSensors: 'Was dort zählt',
    span: 'Wie lange',
    spans: { day: 'Tag', week: 'Woche', season: 'Jahreszeit', own: 'Von – bis' },
    show: 'Zeigen',
    noPlaces: (setUp) => [
      'Noch hat kein Platz Messwerte. Plätze und Sensoren entstehen unter ',
      setUp,
      '.',
    ],
    setUp: 'Einrichten',
  },
};
