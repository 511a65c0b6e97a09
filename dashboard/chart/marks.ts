import type { CurveMark } from '../../daemon/contract/curves.ts';
import type { PanelMark } from './panel.ts';

/** What tells marks apart besides their words. */
export const markShapeKinds = ['coat', 'passed', 'failed', 'move', 'remark', 'notice'] as const;
export type MarkShape = (typeof markShapeKinds)[number];

/** What lies within this share of what is seen counts as pointed at. */
export const NEAR = 0.015;

/** Outlines in a square of 10 × 10; `open` ones are drawn, not filled. */
export const markShapes: Readonly<Record<MarkShape, { path: string; open: boolean }>> = {
  coat: { path: 'M1 2.5h8v5h-8z', open: false },
  passed: { path: 'M5 1a4 4 0 1 1 0 8a4 4 0 1 1 0-8z', open: false },
  failed: { path: 'M5 1a4 4 0 1 1 0 8a4 4 0 1 1 0-8z', open: true },
  move: { path: 'M1 4h4.5V1L9.5 5L5.5 9V6H1z', open: false },
  remark: { path: 'M5 0.8L9.2 5L5 9.2L0.8 5z', open: true },
  notice: { path: 'M5 0.8L9.5 9h-9z', open: false },
};

export function shapeOf(mark: CurveMark): MarkShape {
  if (mark.kind === 'test') return mark.passed ? 'passed' : 'failed';
  return mark.kind;
}

export function panelMarks(marks: readonly CurveMark[]): PanelMark[] {
  return marks.map((mark) => ({ at: Date.parse(mark.at) / 1000, mark }));
}

/** The marks near a moment, the nearest first. */
export function marksNear(marks: readonly PanelMark[], at: number, withinS: number): PanelMark[] {
  const apart = (mark: PanelMark) => Math.abs(mark.at - at);
  return marks
    .filter((mark) => apart(mark) <= withinS)
    .sort((a, b) => apart(a) - apart(b))
    .slice(0, 3);
}
