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
            <StandingCalibration
              key={`${one.id} ${one.recordedAt}`}
              sensor={sensor}
              calibration={one}
              onChanged={again}
            />
          ))}
        </ul>
      )}
      {past.length > 0 && (
        <details class="more">
          <summary>
            {past.length === 1 ? '1 earlier calibration' : `${past.length} earlier calibrations`}{' '}
            kept, corrected or withdrawn since
          </summary>
          <ul class="calibrations">
            {past.map((one) => (
              <li key={`${one.id} ${one.recordedAt}`}>
                <p class="quiet">
                  {inWords(one)}, until{' '}
                  {agoWords(Date.parse(one.replacedAt ?? one.recordedAt), live.now.value)}
                </p>
              </li>
            ))}
          </ul>
        </details>
      )}
      {standing.length > 0 && <h4>A new calibration</h4>}
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

interface StandingProps {
  sensor: Sensor;
  calibration: Calibration;
  onChanged: () => void;
}

function StandingCalibration({ sensor, calibration, onChanged }: StandingProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const [isOpen, setOpen] = useState(false);

  async function withdraw(): Promise<void> {
    const done = await sending.send(() =>
      api.call('withdrawCalibration', { params: { id: calibration.id } }),
    );
    if (done === null) return;
    onChanged();
    await live.refresh();
  }

  return (
    <li>
      <p>
        {inWords(calibration)},{' '}
        {calibration.from === null
          ? 'for all readings'
          : `since ${agoWords(Date.parse(calibration.from), live.now.value)}`}
        {calibration.inForce ? '' : ' (another one holds now)'}
        {calibration.note === null ? '' : `. ${calibration.note}`}
      </p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={withdraw}>
        <button type="submit" class="button button-quiet">
          Withdraw it
        </button>
      </WriteFrame>
      <details class="more" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Correct it</summary>
        {isOpen && <CalibrateForm sensor={sensor} standing={calibration} onDone={onChanged} />}
      </details>
    </li>
  );
}

/** Which quantity, against what, and what it does to what is sent. */
function inWords({ quantity, how, gain, add }: Calibration): string {
  const { name, unit } = quantityWords[quantity];
  const shift = `${add < 0 ? '−' : '+'}${Math.abs(add).toFixed(2)}`;
  const line =
    quantity === 'wood-resistance'
      ? // Resistances are corrected on their logarithm, where an offset is a factor.
        `× ${(10 ** add).toPrecision(3)}`
      : gain === 1
        ? `${shift} ${unit}`
        : `× ${gain.toFixed(3)} ${shift} ${unit}`;
  return `${name}: ${calibrationWords[how.kind].toLowerCase()}, ${line}`;
}
