import { useCallback, useState } from 'preact/hooks';
import type { Calibration } from '../../daemon/contract/calibration.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { agoWords } from '../format/painters-time.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { quantityWords } from '../words/thing-words.ts';
import { calibrationWords } from '../words/trust-words.ts';
import { CalibrateForm } from './calibrate-form.tsx';

/** The calibrations of a sensor, and the form for a new one; read only when it is opened. */
export function CalibrationFold({ sensor }: { sensor: Sensor }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details class="more" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Calibrate {sensor.name ?? sensor.id}</summary>
      {isOpen && <Calibrations sensor={sensor} />}
    </details>
  );
}

function Calibrations({ sensor }: { sensor: Sensor }) {
  const { api, live } = useShed();
  const { replied, again } = useReply(
    useCallback(
      () => api.call('listCalibrations', { params: { id: sensor.id } }),
      [api, sensor.id],
    ),
  );
  const all = replied.kind === 'there' ? replied.reply : [];
  const standing = all.filter(({ replacedAt }) => replacedAt === null);
  const past = all.filter(({ replacedAt }) => replacedAt !== null);
  return (
    <>
      {standing.length > 0 && (
        <ul class="calibrations">
          {standing.map((one) => (
            <StandingCalibration key={one.id} calibration={one} onChanged={again} />
          ))}
        </ul>
      )}
      {past.length > 0 && (
        <p class="quiet">
          {past.length === 1 ? '1 earlier calibration' : `${past.length} earlier calibrations`}{' '}
          kept, corrected or withdrawn since.
        </p>
      )}
      <CalibrateForm
        sensor={sensor}
        onDone={() => {
          again();
          void live.refresh();
        }}
      />
    </>
  );
}

function StandingCalibration(props: { calibration: Calibration; onChanged: () => void }) {
  const { calibration, onChanged } = props;
  const { api, live } = useShed();
  const sending = useSending();
  const { name, unit } = quantityWords[calibration.quantity];

  async function withdraw(): Promise<void> {
    const done = await sending.send(() =>
      api.call('withdrawCalibration', { params: { id: calibration.id } }),
    );
    if (done === null) return;
    onChanged();
    await live.refresh();
  }

  const line =
    calibration.gain === 1
      ? `${calibration.add < 0 ? '−' : '+'}${Math.abs(calibration.add).toFixed(2)} ${unit}`
      : `× ${calibration.gain.toFixed(3)} and ${calibration.add.toFixed(2)} ${unit}`;
  return (
    <li>
      <p>
        {name}: {calibrationWords[calibration.how.kind].toLowerCase()}, {line},{' '}
        {calibration.from === null
          ? 'for all readings'
          : `since ${agoWords(Date.parse(calibration.from), live.now.value)}`}
        {calibration.inForce ? '' : ' (another one holds now)'}
      </p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={withdraw}>
        <button type="submit" class="button button-quiet">
          Withdraw it
        </button>
      </WriteFrame>
    </li>
  );
}
