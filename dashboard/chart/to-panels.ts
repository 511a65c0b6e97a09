import type { AirChanges, BatchCurves, Curves, Spread } from '../../daemon/contract/curves.ts';
import type { Gate, GateVerdict } from '../../daemon/contract/gate.ts';
import { type Measure, toReaders, type UnitSystem } from '../format/units.ts';
import { handPoints } from './hand-points.ts';
import type { Column, Expected, Fan, LineKind, Need, Panel, PanelLine } from './panel.ts';

/** The coat whose sum is drawn, as its batch tells it. */
export interface CoatGates {
  readonly gates: Readonly<Record<Gate, GateVerdict>>;
}

interface Shown {
  readonly curves: Curves | BatchCurves;
  readonly changes: AirChanges | null;
  readonly coat: CoatGates | null;
  readonly units: UnitSystem;
}

/** The metric reply as panels in the reader’s units: the border where figures become the reader’s. */
export function toPanels({ curves, changes, coat, units }: Shown): Panel[] {
  const { at, tempC, rhPercent, dewPointC, woodMoisturePercent, carbonDioxidePpm } = curves;
  const inUnit = (measure: Measure, column: Column) =>
    column.map((value) => (value === null ? null : toReaders(measure, value, units)));
  const panels: Panel[] = [];
  const add = (
    kind: Panel['kind'],
    lines: readonly (PanelLine | null)[],
    points: Panel['points'] = [],
  ) => {
    const there = lines.filter((line) => line !== null);
    if (there.length + points.length === 0) return;
    panels.push({ ...bare, kind, at, lines: there, points });
  };
  const temperature = (kind: LineKind, spread: Spread | null) =>
    spread &&
    lineOf(kind, {
      low: inUnit('tempC', spread.low),
      mean: inUnit('tempC', spread.mean),
      high: inUnit('tempC', spread.high),
    });
  add('temperature', [
    temperature('air', tempC),
    dewPointC && { kind: 'dew', values: inUnit('tempC', dewPointC), band: null },
  ]);
  add('humidity', [rhPercent && lineOf('humidity', rhPercent)]);
  add(
    'moisture',
    [woodMoisturePercent && lineOf('moisture', woodMoisturePercent)],
    handPoints(curves),
  );
  add('gas', [carbonDioxidePpm && lineOf('gas', carbonDioxidePpm)]);
  if (changes?.perHour.some((value) => value !== null)) {
    const { perHour, low, high } = changes;
    const line: PanelLine = { kind: 'changes', values: perHour, band: { low, high } };
    panels.push({ ...bare, kind: 'changes', at: changes.at, lines: [line] });
  }
  if ('countedDegreeHours' in curves && curves.coatId !== null) {
    const sum = (value: number) => toReaders('degreeHours', value, units);
    panels.push({
      kind: 'sum',
      at,
      lines: [
        { kind: 'sum', values: inUnit('degreeHours', curves.countedDegreeHours), band: null },
      ],
      points: [],
      needs: coat === null ? [] : needsOf(coat, sum),
      fan: fanOf(curves, sum),
      expected: coat === null ? [] : expectedOf(coat, sum),
    });
  }
  return panels;
}

const bare = { points: [], needs: [], fan: null, expected: [] } as const;

function lineOf(kind: LineKind, { low, mean, high }: Spread): PanelLine {
  return { kind, values: mean, band: { low, high } };
}

function fanOf({ ahead }: BatchCurves, sum: (value: number) => number): Fan | null {
  if (ahead === null || ahead.at.length < 2) return null;
  const { at, early, likely, late } = ahead;
  return { at, early: early.map(sum), likely: likely.map(sum), late: late.map(sum) };
}

/** Jobs that need the same share a line. */
function needsOf({ gates }: CoatGates, sum: (value: number) => number): Need[] {
  const needs: { gates: Gate[]; early: number; likely: number; late: number }[] = [];
  for (const [gate, { requiredDegreeHours: need }] of entries(gates)) {
    const likely = sum(need.likely);
    const known = needs.find((one) => Math.abs(one.likely - likely) < likely * 0.002);
    if (known) known.gates.push(gate);
    else needs.push({ gates: [gate], early: sum(need.early), likely, late: sum(need.late) });
  }
  return needs.sort((a, b) => a.likely - b.likely);
}

function expectedOf({ gates }: CoatGates, sum: (value: number) => number): Expected[] {
  const at = (moment: string | null) => (moment === null ? null : Date.parse(moment) / 1000);
  return entries(gates).map(([gate, { early, likely, late, requiredDegreeHours }]) => ({
    gate,
    need: sum(requiredDegreeHours.likely),
    early: at(early),
    likely: at(likely),
    late: at(late),
  }));
}

const entries = (gates: CoatGates['gates']) => Object.entries(gates) as [Gate, GateVerdict][];
