import type { Caution } from '../caution.ts';
import type { cautions as English } from '../en/cautions.ts';

/** Shown after a coat was recorded. Common practice, no source; local rules come first. */
const rags: Caution = {
  title: 'Die Lappen, jetzt',
  lines: [
    'Lappen, Schwämme und Papier mit Leinöl erwärmen sich von selbst und können noch Stunden später Feuer fangen. Nie auf einem Haufen, in einer Tasche oder in einem Abfalleimer lassen.',
    'Flach und einlagig im Freien auf etwas ausbreiten, das nicht brennt, bis sie steif sind; oder in einem Blecheimer mit Deckel unter Wasser legen.',
    'Danach so entsorgen, wie es die örtlichen Vorschriften verlangen.',
  ],
};

/** Common practice, no source; the paint maker’s sheet, local codes and licensed practice first. */
export const cautions: typeof English = {
  link: 'Warnhinweise',
  short:
    'Ölige Lappen können von selbst Feuer fangen. Alle Zahlen sind Schätzungen; das Merkblatt des Farbherstellers und die örtlichen Vorschriften gehen vor.',
  wall: 'Ölige Lappen können von selbst Feuer fangen. Zahlen sind Schätzungen.',
  ragsLine:
    'Ölige Lappen von heute? Flach und einlagig im Freien ausbreiten oder in einem Blecheimer mit Deckel unter Wasser.',
  rags,
};
