import type { Sentence } from '../contract/sentence.ts';
import type { NoticeFact, PlaceFact } from '../rules/facts.ts';
import { brushWord, brushWords } from '../rules/fit-to-brush.ts';
import type { MorningView } from '../rules/morning-digest.ts';
import type { BrushCheck } from './brush-check.ts';
import type { placesOverview } from './overview.ts';
import type { SiteFacts } from './site-facts.ts';

interface MorningParts {
  facts: () => SiteFacts;
  overview: ReturnType<typeof placesOverview>;
  fitToBrush: BrushCheck;
  source: { notices(): NoticeFact[] };
}

const isBrushedAt = ({ kind }: PlaceFact) => kind === 'room' || kind === 'wall';
const instant = (moment: string | null) => (moment === null ? null : Date.parse(moment));

/** What the morning looks like: racks, what is wrong, and weather to brush. */
export function morningView({ facts, overview, fitToBrush, source }: MorningParts) {
  return (now: number, doubts: readonly Sentence[]): MorningView => {
    const open = source.notices().filter(({ clearedAt }) => clearedAt === null);
    return {
      batches: overview(now).flatMap((place) =>
        place.batches.map((batch) => ({
          name: batch.name,
          placeName: place.name,
          coatName: batch.coatName,
          job: batch.nextGate,
          verdict: batch.verdict?.verdict ?? null,
          likelyAt: instant(batch.verdict?.likely ?? null),
          because: batch.verdict?.reasons[0] ?? null,
        })),
      ),
      // That a batch is ready stands with its rack already.
      wrong: [...doubts, ...open.filter(({ kind }) => kind !== 'gate-ready').map(noticeSentence)],
      brushing: [...facts().places.values()].filter(isBrushedAt).map((place) => {
        const { placeName, stopBy, stopBecauseSaid, reasons } = fitToBrush(place, null, now);
        // The timber of what is to be coated today is measured then.
        const ofAir = reasons.filter(({ code }) => !code.startsWith('moisture'));
        const against = ofAir.filter(({ weight }) => weight !== 'fine' && weight !== 'note');
        return {
          placeName,
          words: brushWords(brushWord(ofAir)),
          stopBy: instant(stopBy),
          stopBecause: stopBecauseSaid,
          against,
        };
      }),
    };
  };
}

const noticeSentence = ({ kind, text, told = null }: NoticeFact): Sentence => ({
  ...(told ?? { code: kind }),
  text,
});
