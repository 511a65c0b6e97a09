import type { Batch } from '../../daemon/contract/batch.ts';
import type { Coat } from '../../daemon/contract/coat.ts';
import type { Gate } from '../../daemon/contract/gate.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import { BatchActions } from '../actions/batch-actions.tsx';
import { TouchNow } from '../actions/touch-now.tsx';
import { jobsInOrder } from '../format/jobs-in-order.ts';
import { plainList, withinSentence } from '../format/lists.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { WaitingEntry } from '../offline/waiting-entry.tsx';
import { type Reader, useReader } from '../reader.ts';
import { coatingAddress, printAddress, reportAddress } from '../router.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { MountingList } from '../trade/mounting-list.tsx';
import { AirHere } from './air-here.tsx';
import { BatchHero, CoatFacts } from './batch-hero.tsx';
import { ChartPanel } from './chart-panel.tsx';
import { CoatList } from './coat-list.tsx';
import { JobList } from './job-list.tsx';
import { LogList } from './log-list.tsx';
import { useBatch } from './use-batch.ts';
import { WhatHelps } from './what-helps.tsx';

/** One batch: what it waits for, what to record, its curves and all that was recorded. */
export function BatchPage({ id }: { id: string }) {
  const { live, outbox } = useShed();
  const reader = useReader();
  const words = reader.words.batch;
  const { loaded, reload } = useBatch(id);
  const overview = live.overview.value;
  const isAwaited = live.connection.value.kind === 'waiting';
  if (loaded.kind === 'loading' || (overview === null && isAwaited))
    return <main class="page" aria-busy="true" />;
  if (loaded.kind === 'failed') {
    return (
      <main class="page">
        <h1>{words.cannotShow}</h1>
        <ProblemNote problem={loaded.problem} />
      </main>
    );
  }
  const { batch, oldSince } = loaded;
  const coat = batch.coats.find(({ curedUntil }) => curedUntil === null) ?? null;
  const where = whereLies(overview, batch.id);
  // Without any word of the shed the batch itself tells what is still to come.
  const waitedFor = overview === null ? firstNotReady(coat) : (where?.batch.nextGate ?? null);
  const connection = live.connection.value;
  const isOld = oldSince !== null || connection.kind === 'lost';
  const heardAt = live.byShed(
    oldSince ?? (connection.kind === 'lost' ? connection.since : live.deviceNow.value),
  );
  const waiting = outbox.entries.value.filter(
    ({ batchIds, notBefore }) => batchIds.includes(batch.id) && notBefore <= live.deviceNow.value,
  );
  return (
    <main class="page batch">
      <header class="batch-head">
        <h1>{batch.name}</h1>
        <p class="batch-facts">{factsOf(batch, where?.place.name ?? null, reader)}</p>
      </header>
      {isOld && (
        <p class="as-of" role="status">
          {reader.words.offline.asOf(reader.calendar.exact(heardAt))}
        </p>
      )}
      <BatchHero
        batch={batch}
        coat={coat}
        waitedFor={waitedFor}
        fresh={!isOld && where?.place.air.stale !== true}
      />
      {coat !== null && waitedFor !== null && !batch.closed && (
        <TouchNow key={waitedFor} batch={batch} gate={waitedFor} onSent={reload} />
      )}
      {coat !== null && <CoatFacts batch={batch} coat={coat} />}
      <BatchActions
        batch={batch}
        nextGate={waitedFor}
        verdict={coat === null || waitedFor === null ? null : coat.gates[waitedFor].verdict}
        onRecorded={reload}
      />
      {waiting.length > 0 && (
        <section class="batch-waiting" aria-labelledby="batch-waiting-title">
          <h2 id="batch-waiting-title">{reader.words.offline.ofThisBatch}</h2>
          <ol class="waiting-list">
            {waiting.map((entry) => (
              <WaitingEntry key={entry.id} entry={entry} isHeldUp={false} isWithin />
            ))}
          </ol>
        </section>
      )}
      <p class="batch-steps">
        <a href={coatingAddress(batch.id)}>{words.stepByStep}</a>
      </p>
      {batch.cautions.map((caution) => (
        <p key={caution.code} class="caution">
          <Said sentence={caution} />
        </p>
      ))}
      <MountingList batch={batch} onChanged={reload} />
      {coat !== null && <WhatHelps batch={batch} />}
      {coat !== null && <JobList coat={coat} waitedFor={waitedFor} />}
      {where !== null && <AirHere place={where.place} cautions={coat?.cautions ?? []} />}
      <ChartPanel batch={batch} />
      <CoatList batch={batch} onChanged={reload} />
      <p class="action-row batch-print">
        <a class="button" href={printAddress('rack', { batchId: batch.id })}>
          {words.printCard}
        </a>
      </p>
      <LogList batch={batch} />
      <p class="batch-report">
        <a href={reportAddress(batch.id)}>{words.report}</a>
      </p>
    </main>
  );
}

function whereLies(overview: Overview | null, id: string) {
  for (const place of overview?.places ?? []) {
    const batch = place.batches.find((candidate) => candidate.id === id);
    if (batch !== undefined) return { place, batch };
  }
  return null;
}

function firstNotReady(coat: Coat | null): Gate | null {
  return jobsInOrder.find((gate) => coat !== null && coat.gates[gate].verdict !== 'ready') ?? null;
}

function factsOf(batch: Batch, place: string | null, reader: Reader): string {
  const { words, figures, locale } = reader;
  const { facts } = words.batch;
  const { count, lengthMm, widthMm, thicknessMm } = batch.boards;
  const size = [
    figures.bare('lengthMm', lengthMm),
    figures.bare('lengthMm', widthMm),
    figures.measure('lengthMm', thicknessMm),
  ].join(' × ');
  const parts = [
    place === null ? null : facts.at(place),
    facts.boards(count, words.things.species[batch.species]),
    withinSentence(words.things.surfaces[batch.surface], locale),
    size,
    batch.closed ? facts.closed : null,
    batch.recomputing ? facts.recomputing : null,
  ];
  return plainList(parts.filter((part) => part !== null));
}
