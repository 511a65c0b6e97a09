import { useCallback, useEffect } from 'preact/hooks';
import type { Session } from '../../daemon/contract/access.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { ReaderForm } from '../more/reader-form.tsx';
import { useReader } from '../reader.ts';
import { firstRunAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { type Replied, useReply } from '../use-reply.ts';
import { AccessStep } from './access-step.tsx';
import { BatchStep } from './batch-step.tsx';
import { CoatStep } from './coat-step.tsx';
import { RackStep } from './rack-step.tsx';
import { RoomStep } from './room-step.tsx';
import { Screen } from './screen.tsx';
import { SensorStep } from './sensor-step.tsx';
import { SimulatedDoor } from './simulated-door.tsx';
import { SiteStep } from './site-step.tsx';
import type { StepProps } from './step-props.ts';
import { type FirstRunStep, neighbour, stepToGoOn } from './steps.ts';
import { VerdictStep } from './verdict-step.tsx';

/** From nothing to the first verdict. Without a step in the address it goes on where it was left. */
export function FirstRunPage({ step }: { step: FirstRunStep | null }) {
  const { api, live } = useShed();
  const session = useReply(useCallback(() => api.call('readSession', {}), [api]));
  const site = useReply(useCallback(() => api.call('readSite', {}), [api]));
  const sensors = useReply(useCallback(() => api.call('listSensors', {}), [api]));
  const overview = live.overview.value;
  const shown = step ?? stepOf(overview, session.replied, sensors.replied);
  // From then on the address names the screen: what is recorded on it must not turn the page.
  useEffect(() => {
    if (step === null && shown !== null) location.replace(firstRunAddress(shown));
  }, [step, shown]);
  // Readings and what others record change what there is to do.
  useEffect(sensors.again, [overview]);
  const [who, where, heard] = [session.replied, site.replied, sensors.replied];
  if (
    overview === null ||
    shown === null ||
    who.kind !== 'there' ||
    where.kind !== 'there' ||
    heard.kind !== 'there'
  ) {
    return <main class="page" aria-busy="true" />;
  }
  const state = { overview, session: who.reply, sensors: heard.reply };
  const next = neighbour(shown, 1);
  const given: StepProps = {
    ...state,
    site: where.reply,
    async again() {
      session.again();
      site.again();
      sensors.again();
      await live.refresh();
    },
    goOn() {
      location.hash = firstRunAddress(next ?? shown);
    },
  };
  return <Shown key={shown} step={shown} {...given} />;
}

/** Where to go on; null until it is known. */
function stepOf(
  overview: Overview | null,
  session: Replied<Session>,
  sensors: Replied<readonly Sensor[]>,
): FirstRunStep | null {
  if (overview === null || session.kind !== 'there' || sensors.kind !== 'there') return null;
  return stepToGoOn({ overview, session: session.reply, sensors: sensors.reply });
}

function Shown({ step, ...given }: StepProps & { step: FirstRunStep }) {
  switch (step) {
    case 'reader':
      return <ReaderStep />;
    case 'access':
      return <AccessStep {...given} />;
    case 'site':
      return <SiteStep {...given} />;
    case 'room':
      return <RoomStep {...given} />;
    case 'rack':
      return <RackStep {...given} />;
    case 'sensor':
      return <SensorStep {...given} />;
    case 'batch':
      return <BatchStep {...given} />;
    case 'coat':
      return <CoatStep {...given} />;
    case 'verdict':
      return <VerdictStep {...given} />;
  }
}

function ReaderStep() {
  const { firstRun } = useReader().words;
  return (
    <Screen step="reader" says={firstRun.reader.says} isDone below={<SimulatedDoor />}>
      <ReaderForm />
    </Screen>
  );
}
