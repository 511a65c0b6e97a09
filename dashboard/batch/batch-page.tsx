import type { Batch } from '../../daemon/contract/batch.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import { BatchActions } from '../actions/batch-actions.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import { coatingAddress, printAddress, reportAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { MountingList } from '../trade/mounting-list.tsx';
import { speciesWords, surfaceWords } from '../words/thing-words.ts';
import { AirHere } from './air-here.tsx';
import { BatchHero } from './batch-hero.tsx';
import { ChartPanel } from './chart-panel.tsx';
import { CoatList } from './coat-list.tsx';
import { JobList } from './job-list.tsx';
import { LogList } from './log-list.tsx';
import { useBatch } from './use-batch.ts';
import { WhatHelps } from './what-helps.tsx';

/** One batch: what it waits for, what to record, its curves and all that was recorded. */
export function BatchPage({ id }: { id: string }) {
  const { live } = useShed();
  const { loaded, reload } = useBatch(id);
  const overview = live.overview.value;
  if (loaded.kind === 'loading') return <main class="page" aria-busy="true" />;
  if (loaded.kind === 'failed') {
    return (
      <main class="page">
        <h1>This batch cannot be shown</h1>
        <ProblemNote problem={loaded.problem} />
      </main>
    );
  }
  const { batch, chart } = loaded;
  const coat = batch.coats.find(({ curedUntil }) => curedUntil === null) ?? null;
  const where = whereLies(overview, batch.id);
  const waitedFor = where?.batch.nextGate ?? null;
  return (
    <main class="page batch">
      <header class="batch-head">
        <h1>{batch.name}</h1>
        <p class="batch-facts">{factsOf(batch, where?.place.name ?? null)}</p>
      </header>
      <BatchHero
        batch={batch}
        coat={coat}
        waitedFor={waitedFor}
        fresh={live.connection.value.kind !== 'lost' && where?.place.air.stale !== true}
      />
      <BatchActions batch={batch} nextGate={waitedFor} onRecorded={reload} />
      <p class="batch-steps">
        <a href={coatingAddress(batch.id)}>Coat it step by step</a>
      </p>
      {batch.cautions.map((caution) => (
        <p key={caution.code} class="caution">
          {caution.text}
        </p>
      ))}
      <MountingList batch={batch} onChanged={reload} />
      {coat !== null && <WhatHelps batch={batch} />}
      {coat !== null && <JobList coat={coat} waitedFor={waitedFor} />}
      {where !== null && <AirHere place={where.place} cautions={coat?.cautions ?? []} />}
      {coat !== null && <ChartPanel chart={chart} coat={coat} />}
      <CoatList batch={batch} onChanged={reload} />
      <p class="action-row batch-print">
        <a class="button" href={printAddress('rack', { batchId: batch.id })}>
          Print the card for the rack
        </a>
      </p>
      <LogList batch={batch} />
      <p class="batch-report">
        <a href={reportAddress(batch.id)}>The report of this batch, to print or to keep</a>
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

function factsOf(batch: Batch, place: string | null): string {
  const { count, lengthMm, widthMm, thicknessMm } = batch.boards;
  const facts = [
    place === null ? null : `at ${place}`,
    `${count} board${count === 1 ? '' : 's'} of ${speciesWords[batch.species]}`,
    surfaceWords[batch.surface].toLowerCase(),
    `${lengthMm} × ${widthMm} × ${thicknessMm} mm`,
    batch.closed ? 'closed' : null,
    batch.recomputing ? 'late readings are being worked in' : null,
  ];
  return facts.filter((fact) => fact !== null).join(', ');
}
