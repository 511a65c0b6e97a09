import { useState } from 'preact/hooks';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { agoOf } from '../format/painters-time.ts';
import { reading } from '../format/reading.ts';
import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { CalibrationFold } from '../trust/calibration-fold.tsx';
import { FaultNotes } from '../trust/fault-notes.tsx';
import { ProbeLine } from '../trust/probe-line.tsx';
import { SensorTraits } from '../trust/sensor-traits.tsx';

interface SensorListProps {
  overview: Overview;
  sensors: readonly Sensor[];
  onPlaced: () => void;
}

/** Sensors that have sent something, the unplaced first. */
export function SensorList({ overview, sensors, onPlaced }: SensorListProps) {
  const said = useReader().words.setup.sensors;
  if (sensors.length === 0) {
    const topic = `boardcure/${overview.site}/sensor/…/air-temperature`;
    return <p class="quiet">{said.none(<code>{topic}</code>)}</p>;
  }
  const entries = (some: readonly Sensor[]) => (
    <ul class="sensor-list">
      {some.map((sensor) => (
        <SensorEntry key={sensor.id} sensor={sensor} overview={overview} onPlaced={onPlaced} />
      ))}
    </ul>
  );
  const placed = sensors.filter((sensor) => sensor.placeId !== null);
  const unplaced = sensors.filter((sensor) => sensor.placeId === null);
  return (
    <>
      {entries(unplaced)}
      {placed.length > 0 && (
        <details class="more" open={placed.length <= OPEN_UP_TO}>
          <summary>{said.hang(placed.length)}</summary>
          {entries(placed)}
        </details>
      )}
    </>
  );
}

/** A longer list of placed sensors is folded, so that the unplaced stay in sight. */
const OPEN_UP_TO = 2;

interface SensorEntryProps {
  sensor: Sensor;
  overview: Overview;
  onPlaced: () => void;
}

function SensorEntry({ sensor, overview, onPlaced }: SensorEntryProps) {
  const { api, live } = useShed();
  const reader = useReader();
  const { words } = reader;
  const said = words.setup.sensors;
  const sending = useSending();
  const now = live.now.value;
  // What was chosen stays chosen while readings go on coming in.
  const [chosen, setChosen] = useState<string | null>(null);

  async function place(form: FormData): Promise<void> {
    const placeId = textOf(form, 'placeId') || null;
    const changed = await sending.send(() =>
      api.call('changeSensor', { params: { id: sensor.id }, body: { placeId } }),
    );
    if (changed === null) return;
    setChosen(null);
    onPlaced();
    await live.refresh();
  }

  return (
    <li class="sensor" id={`sensor-${sensor.id}`}>
      <h3>{sensor.name ?? sensor.id}</h3>
      {sensor.placeId === null && <p class="sensor-waits">{said.waits}</p>}
      <p class="sensor-latest">
        {sensor.latest.map(({ quantity, value, at }) => (
          <span key={quantity}>
            {said.latest(
              words.things.quantities[quantity],
              reading(quantity, value, reader),
              words.times.ago(agoOf(Date.parse(at), now)),
            )}
          </span>
        ))}
      </p>
      <ProbeLine wood={sensor.wood} />
      <FaultNotes faults={sensor.faults} now={now} />
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={place}>
        <div class="sensor-place">
          <SelectField
            label={said.where(sensor.name ?? sensor.id)}
            name="placeId"
            value={chosen ?? sensor.placeId ?? ''}
            onChange={setChosen}
            pointer="/placeId"
            problem={sending.problem}
          >
            <option value="">{said.nowhere}</option>
            {overview.places.map((place) => (
              <option key={place.id} value={place.id}>
                {place.name}
              </option>
            ))}
          </SelectField>
          <button type="submit" class="button">
            {sensor.placeId === null ? said.place : said.move}
          </button>
        </div>
      </WriteFrame>
      <SensorTraits sensor={sensor} onChanged={onPlaced} />
      <CalibrationFold sensor={sensor} />
    </li>
  );
}
