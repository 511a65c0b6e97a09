import { type Gate, type GateVerdict, gates } from '../contract/gate.ts';
import { toMoment } from '../contract/moment.ts';
import type { MorningRound, RoundQuestion } from '../contract/morning-round.ts';
import type { Sentence } from '../contract/sentence.ts';
import type { BatchFact, RemarkFact } from '../rules/facts.ts';
import { localTime } from '../rules/local-time.ts';
import { questionOf, type RoundCandidate } from '../rules/morning-round.ts';
import { nextJob } from '../rules/next-job.ts';
import { touchPlaces } from '../rules/touch-places.ts';
import { nothingSaidOfTimber } from '../rules/trade-facts.ts';
import { sentence } from '../wording/english.ts';
import type { BatchAssessor } from './assess-batch.ts';
import { type SiteFacts, testsOfCoat } from './site-facts.ts';
import type { TradeView } from './trade-view.ts';

const hourMs = 3_600_000;
/** How long after sanding one still asks how it went. Assumption. */
const outcomeForMs = 3 * 24 * hourMs;

interface RoundParts {
  facts: () => SiteFacts;
  assess: BatchAssessor;
  trade: TradeView;
}

type Candidate = RoundCandidate & { batch: BatchFact; verdict: GateVerdict };

/** The one question of the day: how yesterday’s sanding went, else what is most worth feeling. */
export function morningRound({ facts, assess, trade }: RoundParts): (now: number) => MorningRound {
  const { timeZone } = trade.rules;

  function candidatesOf(batch: BatchFact, now: number): Candidate[] {
    const coat = facts().coats.get(batch.id)?.at(-1);
    if (!coat || batch.closedAt !== null) return [];
    const { placeId } = trade.lies(batch.id, now);
    const kind = facts().places.get(placeId)?.kind ?? 'room';
    const coatCount = facts().plans.get(batch.planId)?.coats.length ?? 0;
    const next = nextJob(coat.coat, coatCount, kind);
    const jobs = new Set<Gate>(next === null ? [] : [next]);
    // Only boards on stickers have to be turned, and only while their back is wet.
    const turns = batch.timber?.support === 'stickers' && coat.faces.includes('back');
    if (turns && kind !== 'wall') jobs.add('turn');
    const assessed = assess.coat(coat, now);
    return gates
      .filter((gate) => jobs.has(gate))
      .map((gate) => {
        const verdict = assessed.gates[gate];
        return {
          batch,
          batchId: batch.id,
          gate,
          boards: batch.boards.count,
          verdict,
          probability: verdict.probability,
          waitHours: verdict.late === null ? null : (Date.parse(verdict.late) - now) / hourMs,
        };
      });
  }

  /** A sanding of a day before, that nobody has said the outcome of. */
  function sandingToAsk(now: number): { batch: BatchFact; remark: RemarkFact } | null {
    const today = localTime(now, timeZone).day;
    for (const batch of facts().batches.values()) {
      const tests = (facts().coats.get(batch.id) ?? []).flatMap((one) => testsOfCoat(facts(), one));
      for (const remark of facts().remarks.get(batch.id) ?? []) {
        const isOld = localTime(remark.at, timeZone).day < today && now - remark.at < outcomeForMs;
        if (remark.kind !== 'sanded' || !isOld || remark.batchId !== batch.id) continue;
        const told = tests.some(({ gate, at }) => gate === 'sand' && at === remark.at);
        const coated = (facts().coats.get(batch.id) ?? []).some(
          (one) => one.finishedAt <= remark.at,
        );
        if (!told && coated) return { batch, remark };
      }
    }
    return null;
  }

  function outcomeQuestion(now: number): RoundQuestion | null {
    const sanding = sandingToAsk(now);
    if (!sanding) return null;
    const { batch, remark } = sanding;
    const coat = (facts().coats.get(batch.id) ?? []).filter((one) => one.finishedAt <= remark.at);
    const last = coat.at(-1);
    if (!last) return null;
    const verdict = assess.coat(last, now).gates.sand;
    const { placeId, placeName, since } = trade.lies(batch.id, remark.at);
    return {
      kind: 'outcome',
      batchId: batch.id,
      batchName: batch.name,
      gate: 'sand',
      at: toMoment(remark.at),
      placeId,
      placeName,
      since,
      verdict: verdict.verdict,
      probability: verdict.probability,
      worthHours: 0,
      ...asked({
        where: [sentence('outcome-where', {})],
        feel: sentence('outcome-feel', {}),
        ifPassed: sentence('outcome-dusted', {}),
        ifFailed: sentence('outcome-clogged', {}),
      }),
    };
  }

  function touchQuestion(now: number): RoundQuestion | null {
    const all = [...facts().batches.values()].flatMap((batch) => candidatesOf(batch, now));
    const chosen = questionOf(all);
    if (!chosen) return null;
    const { batch, gate, verdict } = chosen;
    const { placeId, placeName, since } = trade.lies(batch.id, now);
    const kind = facts().places.get(placeId)?.kind ?? 'room';
    return {
      kind: 'touch',
      batchId: batch.id,
      batchName: batch.name,
      gate,
      at: toMoment(now),
      placeId,
      placeName,
      since,
      verdict: verdict.verdict,
      probability: verdict.probability,
      worthHours: chosen.worthHours,
      ...asked({
        where: touchPlaces(gate, kind, batch.timber ?? nothingSaidOfTimber),
        feel: sentence('how-to-test', { gate }),
        ifPassed: sentence(verdict.verdict === 'ready' ? 'if-passed/as-planned' : 'if-passed/now', {
          gate,
        }),
        ifFailed: sentence('if-failed', { gate }),
      }),
    };
  }

  return (now) => {
    const { day } = localTime(now, timeZone);
    const answered = [...facts().tests.values()]
      .flat()
      .some((test) => localTime(test.recordedAt ?? test.at, timeZone).day === day);
    const question = answered ? null : (outcomeQuestion(now) ?? touchQuestion(now));
    return { day, answered, question };
  };
}

interface Asked {
  where: Sentence[];
  feel: Sentence;
  ifPassed: Sentence;
  ifFailed: Sentence;
}

/** The sentences of a question, each also as text. */
const asked = ({ where, feel, ifPassed, ifFailed }: Asked) => ({
  where: where.map(({ text }) => text),
  whereSaid: where,
  ...{ feel: feel.text, feelSaid: feel },
  ...{ ifPassed: ifPassed.text, ifPassedSaid: ifPassed },
  ...{ ifFailed: ifFailed.text, ifFailedSaid: ifFailed },
});
