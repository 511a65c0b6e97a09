import type { Session } from '../../daemon/contract/access.ts';
import { TextField } from '../forms/field.tsx';
import { PinField } from '../forms/pin-field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { AccessForm } from './access-form.tsx';

/** Asks for the PIN. */
export function LogInForm({ onLoggedIn }: { onLoggedIn: (session: Session) => void }) {
  const { api } = useShed();
  const { pin } = useReader().words;
  const sending = useSending();

  async function logIn(form: FormData): Promise<unknown> {
    const device = textOf(form, 'device');
    const session = await sending.send(() =>
      api.call('logIn', {
        body: { pin: textOf(form, 'pin'), ...(device === '' ? {} : { device }) },
      }),
    );
    if (session !== null) onLoggedIn(session);
    return session;
  }

  return (
    <AccessForm sending={sending} onSend={logIn}>
      <PinField
        label={pin.label}
        name="pin"
        isNew={false}
        pointer="/pin"
        problem={sending.problem}
      />
      <TextField
        label={pin.device}
        name="device"
        pointer="/device"
        problem={sending.problem}
        hint={pin.deviceHint}
      />
      <button type="submit" class="button button-main">
        {pin.logIn}
      </button>
    </AccessForm>
  );
}
