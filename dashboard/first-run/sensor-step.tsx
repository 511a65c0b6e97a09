import { useCallback, useEffect } from 'preact/hooks';
import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { agoOf } from '../format/painters-time.ts';
import { reading } from '../format/reading.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { mayTry, WhyClosed } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { topicAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { NodeHelp } from './node-help.tsx';
import { Screen } from './screen.tsx';
import { SimulatedDoor } from './simulated-door.tsx';
import type { StepProps } from './step-props.ts';

/** Topics that are named at once; the others stand on their own page. */
const MOST_TOPICS = 3;
const LOOK_EVERY_MS = 3000;

/** What is heard, as it is heard, and one tap for where it hangs. */
export function SensorStep({ overview, site, sensors, again }: StepProps) {
  const { words } = useReader();
  const said = words.firstRun.sensor;
  const placed = sensors.filter(({ placeId }) => placeId !== null);
  const unplaced = sensors.filter(({ placeId }) => placeId === null);
  const nameOf = (id: string | null) => overview.places.find((one) => one.id === id)?.name ?? '';
  return (
    <Screen
      step="sensor"
      says={said.says}
      isDone={placed.length > 0}
      below={sensors.length === 0 ? <SimulatedDoor /> : null}
    >
      {!mayTry(overview) && <WhyClosed />}
      <p class="first-run-heard" role="status">
        {sensors.length === 0 ? said.listening : said.heard(sensors.length)}
      </p>
      <ul class="sensor-list">
        {unplaced.map((sensor) => (
          <HeardSensor
            key={sensor.id}
            sensor={sensor}
            places={overview.places}
            closed={!mayTry(overview)}
            onPlaced={again}
          />
        ))}
        {placed.map(({ id, name, placeId }) => (
          <li key={id} class="sensor">
            {said.hangs(name ?? id, nameOf(placeId))}
          </li>
        ))}
      </ul>
      <UnknownTopics />
      <NodeHelp site={site} open={sensors.length === 0} />
    </Screen>
  );
}

interface HeardSensorProps {
  sensor: Sensor;
  places: readonly OverviewPlace[];
  closed: boolean;
  onPlaced: () => Promise<void>;
}

function HeardSensor({ sensor, places, closed, onPlaced }: HeardSensorProps) {
  const { api, live } = useShed();
  const reader = useReader();
  const { words } = reader;
  const said = words.firstRun.sensor;
  const sending = useSending();
  const name = sensor.name ?? sensor.id;

  async function hangsAt(placeId: string): Promise<void> {
    const changed = await sending.send(() =>
      api.call('changeSensor', { params: { id: sensor.id }, body: { placeId } }),
    );
    if (changed !== null) await onPlaced();
  }

  return (
    <li class="sensor">
      <h2>{name}</h2>
      <p class="sensor-latest">
        {sensor.latest.map(({ quantity, value, at }) => (
          <span key={quantity}>
            {words.setup.sensors.latest(
              words.things.quantities[quantity],
              reading(quantity, value, reader),
              words.times.ago(agoOf(Date.parse(at), live.now.value)),
            )}
          </span>
        ))}
      </p>
      <fieldset class="choice" disabled={closed} aria-busy={sending.busy}>
        <legend>{said.hangsWhere(name)}</legend>
        <div class="action-row">
          {places.map((place) => (
            <button
              key={place.id}
              type="button"
              class="button"
              onClick={() => void hangsAt(place.id)}
            >
              {said.here(place.name)}
            </button>
          ))}
        </div>
      </fieldset>
      <ProblemNote problem={sending.problem} />
    </li>
  );
}

/** What comes in that nobody understands yet, with the way to teach it. */
function UnknownTopics() {
  const { api } = useShed();
  const said = useReader().words.firstRun.sensor;
  const { replied, again } = useReply(useCallback(() => api.call('foundTopics', {}), [api]));
  useEffect(() => {
    const looking = setInterval(again, LOOK_EVERY_MS);
    return () => clearInterval(looking);
  }, []);
  if (replied.kind !== 'there' || replied.reply.topics.length === 0) return null;
  const { topics } = replied.reply;
  return (
    <section>
      <p>{said.unknown(topics.length)}</p>
      <ul>
        {topics.slice(0, MOST_TOPICS).map(({ topic }) => (
          <li key={topic} class="first-run-topic">
            <a href={topicAddress(topic)}>{said.teach(<code>{topic}</code>)}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}
