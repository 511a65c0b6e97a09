import { useCallback, useState } from 'preact/hooks';
import type { Calibration } from '../../daemon/contract/calibration.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { CalibrateForm } from './calibrate-form.tsx';
import { pastLine, standingLine } from './calibration-line.ts';

/** The calibrations of a sensor, and the form for a new one; read only when it is opened. */
export function CalibrationFold({ sensor }: { sensor: Sensor }) {
  const [isOpen, setOpen] = useState(false);
  const words = useReader().words.trust.calibrate;
  return (
    <details class="more" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.fold(sensor.name ?? sensor.id)}</summary>
      {isOpen && <Calibrations sensor={sensor} />}
    </details>
  );
}

function Calibrations({ sensor }: { sensor: Sensor }) {
  const { api, live } = useShed();
  const reader = useReader();
  const words = reader.words.trust.calibrate;
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
          <summary>{words.earlier(past.length)}</summary>
          <ul class="calibrations">
            {past.map((one) => (
              <li key={`${one.id} ${one.recordedAt}`}>
                <p class="quiet">{pastLine(one, reader)}</p>
              </li>
            ))}
          </ul>
        </details>
      )}
      {standing.length > 0 && <h4>{words.another}</h4>}
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
  const reader = useReader();
  const words = reader.words.trust.calibrate;
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
      <p>{standingLine(calibration, reader)}</p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={withdraw}>
        <button type="submit" class="button button-quiet">
          {words.withdraw}
        </button>
      </WriteFrame>
      <details class="more" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{words.correct}</summary>
        {isOpen && <CalibrateForm sensor={sensor} standing={calibration} onDone={onChanged} />}
      </details>
    </li>
  );
}
