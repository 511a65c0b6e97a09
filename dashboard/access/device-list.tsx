import { useCallback, useState } from 'preact/hooks';
import type { Device, PairingCode } from '../../daemon/contract/access.ts';
import { agoOf } from '../format/painters-time.ts';
import { TextField } from '../forms/field.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { AccessForm } from './access-form.tsx';

/** Who is logged in or paired, how to send one away, and how to let a tablet in. */
export function DeviceList({ onLoggedOut }: { onLoggedOut: () => void }) {
  const { api } = useShed();
  const { devices: words, pairing } = useReader().words.access;
  const { replied, again } = useReply(useCallback(() => api.call('listDevices', {}), [api]));
  const sending = useSending();
  const [sure, setSure] = useState(false);
  const devices = replied.kind === 'there' ? replied.reply : [];

  async function end(device: Device): Promise<void> {
    const left = await sending.send(() => api.call('endDevice', { params: { id: device.id } }));
    if (left === null) return;
    if (device.isThis) onLoggedOut();
    else again();
  }

  async function endAll(): Promise<void> {
    const left = await sending.send(() => api.call('endDevices', { query: {} }));
    if (left !== null) onLoggedOut();
  }

  return (
    <>
      <ul class="device-list">
        {devices.map((device) => (
          <DeviceEntry key={device.id} device={device} busy={sending.busy} onEnd={end} />
        ))}
      </ul>
      <ProblemNote problem={sending.problem} />
      {sure ? (
        <div class="action-row">
          <button
            type="button"
            class="button button-main"
            aria-disabled={sending.busy}
            onClick={() => void endAll()}
          >
            {words.endAllSurely}
          </button>
          <button type="button" class="button" onClick={() => setSure(false)}>
            {words.leave}
          </button>
        </div>
      ) : (
        <button type="button" class="button button-quiet" onClick={() => setSure(true)}>
          {words.endAll}
        </button>
      )}
      <h3>{pairing.letIn}</h3>
      <TabletForm />
    </>
  );
}

interface DeviceEntryProps {
  device: Device;
  busy: boolean;
  onEnd: (device: Device) => Promise<void>;
}

function DeviceEntry({ device, busy, onEnd }: DeviceEntryProps) {
  const now = useShed().live.deviceNow.value;
  const { access, times } = useReader().words;
  const words = access.devices;
  const { kind, role, name, seenAt, isThis } = device;
  return (
    <li>
      <div class="device-said">
        <p class="device-name">{isThis ? words.thisOne(name) : name}</p>
        <p class="device-state quiet">
          {seenAt === null
            ? words.state(words.kinds[kind], words.roles[role])
            : words.stateSeen(
                words.kinds[kind],
                words.roles[role],
                times.ago(agoOf(Date.parse(seenAt), now)),
              )}
        </p>
      </div>
      <button
        type="button"
        class="button"
        aria-disabled={busy}
        aria-label={words.endNamed[kind](name)}
        onClick={() => void onEnd(device)}
      >
        {words.end[kind]}
      </button>
    </li>
  );
}

function TabletForm() {
  const { api } = useShed();
  const { words, calendar } = useReader();
  const { pairing } = words.access;
  const sending = useSending();
  const [code, setCode] = useState<PairingCode | null>(null);

  async function make(form: FormData): Promise<unknown> {
    const made = await sending.send(() =>
      api.call('createPairingCode', { body: { name: textOf(form, 'name') } }),
    );
    if (made !== null) setCode(made);
    return made;
  }

  return (
    <>
      <AccessForm sending={sending} onSend={make}>
        <TextField label={pairing.name} name="name" pointer="/name" problem={sending.problem} />
        <button type="submit" class="button">
          {pairing.makeCode}
        </button>
      </AccessForm>
      {code !== null && (
        <div class="shown-once" role="status">
          <p>{pairing.typeThere(code.name, calendar.exact(Date.parse(code.expiresAt)))}</p>
          <p class="shown-once-text">{code.code}</p>
        </div>
      )}
    </>
  );
}
