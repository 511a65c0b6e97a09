import { useCallback, useEffect, useState } from 'preact/hooks';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { measured } from '../format/measured.ts';
import { agoWords } from '../format/painters-time.ts';
import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { CalibrationFold } from '../trust/calibration-fold.tsx';
import { FaultNotes } from '../trust/fault-notes.tsx';
import { ProbeLine } from '../trust/probe-line.tsx';
import { SensorTraits } from '../trust/sensor-traits.tsx';
import { useReply } from '../use-reply.ts';
import { quantityWords } from '../words/thing-words.ts';

/** Sensors that have sent something, the unplaced first. */
export function SensorList({ overview }: { overview: Overview }) {
  const { api } = useShed();
  const { replied, again } = useReply(useCallback(() => api.call('listSensors', {}), [api]));
  // `overview` is there to read again when something came in.
  useEffect(again, [overview]);
  if (replied.kind !== 'there') return null;
  const sensors = [...replied.reply].sort((a, b) => a.id.localeCompare(b.id));
  if (sensors.length === 0) {
    return (
      <p class="quiet">
        None yet. A sensor appears here by itself with its first reading over MQTT, on the topic{' '}
        <code>boardcure/{overview.site}/sensor/…/air-temperature</code>.
      </p>
    );
  }
  const entries = (some: readonly Sensor[]) => (
    <ul class="sensor-list">
      {some.map((sensor) => (
        <SensorEntry key={sensor.id} sensor={sensor} overview={overview} onPlaced={again} />
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
          <summary>
            {placed.length === 1 ? '1 sensor hangs' : `${placed.length} sensors hang`} where{' '}
            {placed.length === 1 ? 'it should' : 'they should'}
          </summary>
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
    <li class={sensor.placeId === null ? 'sensor sensor-unplaced' : 'sensor'}>
      <h3>{sensor.name ?? sensor.id}</h3>
      <p class="sensor-latest">
        {sensor.latest.map((latest) => {
          const { name } = quantityWords[latest.quantity];
          return (
            <span key={latest.quantity}>
              {name} {measured(latest.quantity, latest.value)},{' '}
              {agoWords(Date.parse(latest.at), now)}
            </span>
          );
        })}
      </p>
      <ProbeLine wood={sensor.wood} />
      <FaultNotes faults={sensor.faults} now={now} />
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={place}>
        <div class="sensor-place">
          <SelectField
            label={`Where ${sensor.name ?? sensor.id} hangs`}
            name="placeId"
            value={chosen ?? sensor.placeId ?? ''}
            onChange={setChosen}
            pointer="/placeId"
            problem={sending.problem}
          >
            <option value="">nowhere yet</option>
            {overview.places.map((place) => (
              <option key={place.id} value={place.id}>
                {place.name}
              </option>
            ))}
          </SelectField>
          <button type="submit" class="button">
            {sensor.placeId === null ? 'Place it' : 'Move it'}
          </button>
        </div>
      </WriteFrame>
      <SensorTraits sensor={sensor} onChanged={onPlaced} />
      <CalibrationFold sensor={sensor} />
    </li>
  );
}
