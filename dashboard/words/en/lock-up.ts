import type { Node } from '../node.ts';
import { phrase } from '../phrase.ts';

/** What is seen to before the shed is left on a day of coating. */
export const lockUp = {
  title: 'Lock up',
  printCard: 'Print the card for the door',
  cardWorks: 'It works when this computer does not.',
  noCoatingDay: 'Nothing was coated or sanded today, as far as anybody recorded it.',
  tickProves:
    'A tick proves nothing: look at it, touch it. The rags are told again until they are ticked.',
  whoLooks: 'Who looks',
  seenTo: (moment: Node) => phrase`Seen to, ${moment}`,
  seenToBy: (who: string, moment: Node) => phrase`Seen to by ${who}, ${moment}`,
  night: {
    title: 'Tonight, where wet boards lie',
    noLow: 'The low of this night cannot be told yet: the readings do not reach back far enough.',
    low: (temperature: string, error: string, moment: Node) =>
      phrase`Lowest about ${temperature} (± ${error}), ${moment}.`,
    /** `batch` is a name in bold; `reasons` are whole sentences. */
    atRisk: (batch: Node, reasons: Node) => [batch, ' is at risk: ', reasons],
    nothing: 'Nothing expected tonight is against them.',
  },
};
