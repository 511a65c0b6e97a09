import { useCallback, useEffect } from 'preact/hooks';
import { mayTry, WhyClosed } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { batchAddress, firstRunAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { FoundTopics } from '../topics/found-topics.tsx';
import { ComparePanel } from '../trust/compare-panel.tsx';
import { useReply } from '../use-reply.ts';
import { BatchForm } from './batch-form.tsx';
import { BatchIndex } from './batch-index.tsx';
import { NoticeList } from './notice-list.tsx';
import { PlaceForm } from './place-form.tsx';
import { PlaceList } from './place-list.tsx';
import { PlanList } from './plan-list.tsx';
import { RefusedFold } from './refused-fold.tsx';
import { SensorHealth } from './sensor-health.tsx';
import { SensorList } from './sensor-list.tsx';
import { TinPanel } from './tin-panel.tsx';

/** Places, sensors, batches and plans: everything that is set up once. */
export function SetupPage() {
  const { api, live } = useShed();
  const { setup } = useReader().words;
  const plans = useReply(useCallback(() => api.call('listPlans', {}), [api]));
  const batches = useReply(useCallback(() => api.call('listBatches', {}), [api]));
  const known = useReply(useCallback(() => api.call('listSensors', {}), [api]));
  const overview = live.overview.value;
  // Read again when something came in.
  useEffect(known.again, [overview]);
  if (overview === null) return <main class="page" />;
  const planList = plans.replied.kind === 'there' ? plans.replied.reply : [];
  const sensors =
    known.replied.kind === 'there'
      ? [...known.replied.reply].sort((a, b) => a.id.localeCompare(b.id))
      : null;
  return (
    <main class="page page-wide setup">
      <h1>{setup.title}</h1>
      <p>
        <a href={firstRunAddress()}>{setup.guided}</a>
      </p>
      {!mayTry(overview) && <WhyClosed />}
      <NoticeList overview={overview} />
      {sensors !== null && <SensorHealth sensors={sensors} places={overview.places} />}
      <div class="setup-columns">
        <div class="panels">
          <section class="panel" aria-labelledby="place-title">
            <h2 id="place-title">{setup.place.title}</h2>
            <PlaceForm places={overview.places} />
            <PlaceList places={overview.places} />
          </section>
          <section class="panel" aria-labelledby="found-title">
            <h2 id="found-title">{setup.found.title}</h2>
            <FoundTopics overview={overview} most={3} />
          </section>
        </div>
        <div class="panels">
          <section class="panel" aria-labelledby="sensor-title">
            <h2 id="sensor-title">{setup.sensors.title}</h2>
            {sensors !== null && (
              <SensorList overview={overview} sensors={sensors} onPlaced={known.again} />
            )}
          </section>
          <section class="panel" aria-labelledby="compare-title">
            <h2 id="compare-title">{setup.compare.title}</h2>
            <ComparePanel />
          </section>
        </div>
        <section class="panel" aria-labelledby="batch-title">
          <h2 id="batch-title">{setup.batch.title}</h2>
          <BatchForm
            places={overview.places}
            plans={planList}
            batches={batches.replied.kind === 'there' ? batches.replied.reply : []}
            onStarted={(batchId) => {
              batches.again();
              location.hash = batchAddress(batchId);
            }}
          />
        </section>
        <section class="panel" aria-labelledby="plan-title">
          <h2 id="plan-title">{setup.plans.title}</h2>
          <PlanList plans={planList} onChanged={plans.again} />
        </section>
        <section class="panel" aria-labelledby="tin-title">
          <h2 id="tin-title">{setup.tins.title}</h2>
          <TinPanel />
        </section>
        {batches.replied.kind === 'there' && <BatchIndex batches={batches.replied.reply} />}
      </div>
      <RefusedFold />
    </main>
  );
}
