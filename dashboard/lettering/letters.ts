import { type Letter, type Plank, plainLetters as plain } from './plain-letters.ts';

/** Two offcuts side by side. */
function dots(middle: number): Plank[] {
  return [middle - 25, middle + 7].map((x) => [x, -26, x + 18, -26, x + 18, -8, x, -8]);
}

/** Four offcuts laid in a ring. */
function ring(middle: number): Plank[] {
  const [left, right] = [middle - 15, middle + 15];
  return [
    [left, -30, right, -30, right, -23, left, -23],
    [left, -11, right, -11, right, -4, left, -4],
    [left, -21, left + 8, -21, left + 8, -13, left, -13],
    [right - 8, -21, right, -21, right, -13, right - 8, -13],
  ];
}

function topped(letter: Letter, above: (middle: number) => Plank[]): Letter {
  return { ...letter, planks: [...letter.planks, ...above(letter.width / 2)] };
}

/** Capitals of the five languages. */
export const letters: Readonly<Record<string, Letter>> = {
  ...plain,
  Ä: topped(plain.A, dots),
  Ö: topped(plain.O, dots),
  Ü: topped(plain.U, dots),
  Å: topped(plain.A, ring),
  Ø: { ...plain.O, planks: [...plain.O.planks, [24, 75, 37, 75, 56, 25, 43, 25]] },
};
