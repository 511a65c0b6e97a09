/** A point of a curve. */
export interface CurvePoint {
  at: number;
  value: number;
}

/**
 * Thins a curve out, keeping the lowest and the highest point of each stretch, so that no peak is
 * lost.
 *
 * @param points - ascending by `at`
 * @param count - about how many to keep, at least 2
 */
export function thinOut<P extends CurvePoint>(points: readonly P[], count: number): P[] {
  if (points.length <= count) return [...points];
  const stretches = Math.max(1, Math.floor(count / 2));
  const kept: P[] = [];
  for (let i = 0; i < stretches; i++) {
    const start = Math.floor((i * points.length) / stretches);
    const end = Math.floor(((i + 1) * points.length) / stretches);
    let low = points[start];
    let high = points[start];
    for (let j = start; j < end; j++) {
      const point = points[j];
      if (!point || !low || !high) continue;
      if (point.value < low.value) low = point;
      if (point.value > high.value) high = point;
    }
    if (!low || !high) continue;
    if (low === high) kept.push(low);
    else kept.push(...(low.at < high.at ? [low, high] : [high, low]));
  }
  return kept;
}
