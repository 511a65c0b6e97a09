import type { Quantity } from '../../contract/quantity.ts';
import { binMean, binMs, binsPerHour } from './bins.ts';
import { end, type Finding, hourMs, nothingFound, raise } from './finding.ts';
import { type Hung, lookIfSwapped } from './swapped-places.ts';

/** Only what moved by so much within the hours that are compared may have been swapped. Assumptions. */
const movedBy: Partial<Record<Quantity, number>> = {
  'air-temperature': 1,
  'relative-humidity': 5,
};
const lookBack = 2 * binsPerHour + 3;
/** Sensors that moved lately are remembered for so long, bins. */
const lately = binsPerHour;
/** A suspicion that nobody took up fades after so long. Assumption. */
const fadesMs = 7 * 24 * hourMs;

/** A crossing so much later than the first is another one. */
const backAfterMs = 2 * hourMs;

/** Looks for pairs of sensors that changed places; only those that moved lately are compared. */
export function swapWatch() {
  const movers = new Map<Quantity, Map<number, { hung: Hung; bin: number }>>();
  const findings = new Map<number, Finding>();

  function findingOf(sensorKey: number): Finding {
    let finding = findings.get(sensorKey);
    if (!finding) {
      finding = nothingFound();
      findings.set(sensorKey, finding);
    }
    return finding;
  }

  return {
    findingOf,
    /** Takes in that a series closed a bin. */
    look(quantity: Quantity, hung: Hung, bin: number): void {
      const least = movedBy[quantity];
      if (least === undefined) return;
      const standing = findings.get(hung.sensorKey)?.standing;
      if (standing && bin * binMs - standing.fromAt > fadesMs)
        end(findingOf(hung.sensorKey), bin * binMs);
      const ofQuantity = movers.get(quantity) ?? new Map<number, { hung: Hung; bin: number }>();
      movers.set(quantity, ofQuantity);
      const step = Math.abs(binMean(hung.bins, bin) - binMean(hung.bins, bin - lookBack));
      if (!(step >= least)) {
        const known = ofQuantity.get(hung.sensorKey);
        if (known && bin - known.bin > lately) ofQuantity.delete(hung.sensorKey);
        return;
      }
      ofQuantity.set(hung.sensorKey, { hung, bin });
      for (const { hung: other, bin: otherBin } of ofQuantity.values()) {
        if (other.sensorKey === hung.sensorKey || bin - otherBin > lately) continue;
        const swapped = lookIfSwapped(quantity, hung, other, Math.min(bin, otherBin) - 1);
        if (!swapped) continue;
        for (const { sensorKey } of [hung, other]) {
          const finding = findingOf(sensorKey);
          const before = finding.standing;
          // They crossed once more: someone hung them back.
          if (before && swapped.fromAt - before.fromAt > backAfterMs) end(finding, swapped.fromAt);
          else raise(finding, swapped.fromAt, swapped.seen);
        }
      }
    },
    /** Sensors of whom something else is to be said since this was asked last. */
    stirred(): number[] {
      if (findings.size === 0) return [];
      return [...findings].flatMap(([sensorKey, finding]) => {
        const was = finding.stirred;
        finding.stirred = false;
        return was ? [sensorKey] : [];
      });
    },
    forget(sensorKey: number): void {
      findings.delete(sensorKey);
      for (const ofQuantity of movers.values()) ofQuantity.delete(sensorKey);
    },
  };
}
