import { useCallback } from 'preact/hooks';
import type { OverviewBatch, OverviewPlace } from '../../daemon/contract/overview.ts';
import { type AirFault, airFaults, type RackCall, rackCall } from '../format/rack-look.ts';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { SignMark } from '../wall/sign-mark.tsx';
import type { Sign } from '../words/sign.ts';
import { WeekStrip } from './week-strip.tsx';

const signOf: Readonly<Record<RackCall, Sign>> = {
  leave: 'wait',
  feel: 'test',
  'go-on': 'ready',
  held: 'hold',
  bare: 'bare',
  done: 'done',
  'no-data': 'no-data',
};

/** Every rack with boards: leave it, feel it or go on, and what is wrong with its air. */
export function RackList() {
  const { api, live } = useShed();
  const { racks, week } = useReader().words.trade.round;
  const { replied } = useReply(useCallback(() => api.call('trade', {}), [api]));
  const limits = replied.kind === 'there' ? replied.reply.application : null;
  const places = (live.overview.value?.places ?? []).filter(({ batches }) => batches.length > 0);
  return (
    <section class="racks" aria-labelledby="racks-title">
      <h2 id="racks-title">{racks.title}</h2>
      {places.length === 0 && <p>{racks.none}</p>}
      {places.map((place) => (
        <section key={place.id} class="rack" aria-labelledby={`rack-${place.id}`}>
          <h3 id={`rack-${place.id}`}>{place.name}</h3>
          <AirLine place={place} faults={airFaults(place, limits)} />
          <ul class="rack-batches">
            {place.batches.map((batch) => (
              <RackBatch key={batch.id} batch={batch} hasAir={place.air.tempC !== null} />
            ))}
          </ul>
        </section>
      ))}
      {places.length > 0 && <p class="footnote">{week.how}</p>}
    </section>
  );
}

function AirLine({ place, faults }: { place: OverviewPlace; faults: readonly AirFault[] }) {
  const { words, figures } = useReader();
  const { racks } = words.trade.round;
  const said: Readonly<Record<AirFault, string>> = {
    cold: racks.cold(figures.temperature(place.air.tempC)),
    damp: racks.damp(figures.humidity(place.air.rhPercent)),
    stuffy: racks.stuffy,
    silent: racks.silent,
  };
  return faults.length === 0 ? (
    <p class="quiet">{racks.fine}</p>
  ) : (
    <p class="rack-faults">
      {faults.map((fault) => (
        <span key={fault}>{said[fault]} </span>
      ))}
    </p>
  );
}

function RackBatch({ batch, hasAir }: { batch: OverviewBatch; hasAir: boolean }) {
  const { words } = useReader();
  const call = rackCall(batch, hasAir);
  const job = batch.nextGate === null ? '' : words.jobs[batch.nextGate].infinitive;
  return (
    <li class="rack-batch">
      <a class="rack-call" href={batchAddress(batch.id)}>
        <SignMark sign={signOf[call]} />
        <span>
          <strong>{callWords(call, job, words.trade.round.racks)}</strong>
          <span class="rack-name">{batch.name}</span>
        </span>
      </a>
      {batch.verdict !== null && batch.nextGate !== null && hasAir && (
        <WeekStrip verdict={batch.verdict} gate={batch.nextGate} />
      )}
    </li>
  );
}

function callWords(
  call: RackCall,
  job: string,
  racks: ReturnType<typeof useReader>['words']['trade']['round']['racks'],
): string {
  switch (call) {
    case 'leave':
      return racks.leave(job);
    case 'feel':
      return racks.feel(job);
    case 'go-on':
      return racks.goOn(job);
    case 'held':
      return racks.held(job);
    case 'bare':
      return racks.bare;
    case 'done':
      return racks.done;
    case 'no-data':
      return racks.noData;
  }
}
