import type { Calibration } from '../../daemon/contract/calibration.ts';
import { correction } from '../format/reading.ts';
import type { Reader } from '../reader.ts';

/** A calibration that holds: which quantity, against what, what it does, and since when. */
export function standingLine(calibration: Calibration, reader: Reader): string {
  const words = reader.words.trust.calibrate;
  const { from, inForce, note } = calibration;
  const said = partsOf(calibration, reader);
  const line =
    from === null
      ? words.forAll(...said)
      : words.since(...said, reader.calendar.exact(Date.parse(from)));
  const inPlace = inForce ? line : words.notInForce(line);
  return note === null ? inPlace : words.withNote(inPlace, note);
}

/** One that was corrected or withdrawn, and when. */
export function pastLine(calibration: Calibration, reader: Reader): string {
  const { recordedAt, replacedAt } = calibration;
  const until = reader.calendar.exact(Date.parse(replacedAt ?? recordedAt));
  return reader.words.trust.calibrate.until(...partsOf(calibration, reader), until);
}

function partsOf(
  { quantity, how, gain, add }: Calibration,
  reader: Reader,
): [quantity: string, way: string, correction: string] {
  const { things, trust } = reader.words;
  return [
    things.quantities[quantity],
    trust.calibrate.waysWithin[how.kind],
    correction(quantity, gain, add, reader),
  ];
}
