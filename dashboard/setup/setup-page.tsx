import { useCallback } from 'preact/hooks';
import { mayTry, WhyClosed } from '../forms/write-frame.tsx';
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
import { SensorList } from './sensor-list.tsx';
import { TinPanel } from './tin-panel.tsx';

/** Places, sensors, batches and plans: everything that is set up once. */
export function SetupPage() {
  const { api, live } = useShed();
  const plans = useReply(useCallback(() => api.call('listPlans', {}), [api]));
  const batches = useReply(useCallback(() => api.call('listBatches', {}), [api]));
  const overview = live.overview.value;
  if (overview === null) return <main class="page" />;
  const planList = plans.replied.kind === 'there' ? plans.replied.reply : [];
  return (
    <main class="page setup">
      <h1>Set up</h1>
      {!mayTry(overview) && <WhyClosed />}
      <NoticeList overview={overview} />
      <div class="setup-columns">
        <div class="panels">
          <section class="panel" aria-labelledby="place-title">
            <h2 id="place-title">A new place</h2>
            <PlaceForm places={overview.places} />
            <PlaceList places={overview.places} />
          </section>
          <section class="panel" aria-labelledby="found-title">
            <h2 id="found-title">Found, not known yet</h2>
            <FoundTopics overview={overview} most={3} />
          </section>
        </div>
        <section class="panel" aria-labelledby="sensor-title">
          <h2 id="sensor-title">Sensors</h2>
          <SensorList overview={overview} />
        </section>
        <section class="panel" aria-labelledby="compare-title">
          <h2 id="compare-title">Compare sensors</h2>
          <ComparePanel />
        </section>
        <section class="panel" aria-labelledby="batch-title">
          <h2 id="batch-title">A new batch</h2>
          <BatchForm
            places={overview.places}
            plans={planList}
            batches={batches.replied.kind === 'there' ? batches.replied.reply : []}
            onStarted={batches.again}
          />
        </section>
        <section class="panel" aria-labelledby="plan-title">
          <h2 id="plan-title">Coating plans</h2>
          <PlanList plans={planList} onChanged={plans.again} />
        </section>
        <section class="panel" aria-labelledby="tin-title">
          <h2 id="tin-title">Tins</h2>
          <TinPanel />
        </section>
      </div>
      {batches.replied.kind === 'there' && <BatchIndex batches={batches.replied.reply} />}
      <RefusedFold />
    </main>
  );
}
