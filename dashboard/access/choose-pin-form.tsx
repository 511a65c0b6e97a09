import type { Session } from '../../daemon/contract/access.ts';
import { TextField } from '../forms/field.tsx';
import { PinField } from '../forms/pin-field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useShed } from '../shed-context.ts';
import { AccessForm } from './access-form.tsx';

interface ChoosePinProps {
  /** Whose PIN; the owner’s comes first. */
  whose: 'own' | 'operate';
  /** What has to be shown besides the new PIN. */
  proof: 'set-up-code' | 'current-pin' | 'none';
  onSet: (session: Session) => void;
}

/** Sets a PIN for the first time, or changes it. */
export function ChoosePinForm({ whose, proof, onSet }: ChoosePinProps) {
  const { api } = useShed();
  const sending = useSending();
  const { problem } = sending;

  async function choose(form: FormData): Promise<unknown> {
    const session = await sending.send(() =>
      api.call('setPin', {
        body: {
          role: whose,
          pin: textOf(form, 'new'),
          ...(proof === 'set-up-code' ? { setUpCode: textOf(form, 'code') } : {}),
          ...(proof === 'current-pin' ? { currentPin: textOf(form, 'current') } : {}),
        },
      }),
    );
    if (session !== null) onSet(session);
    return session;
  }

  return (
    <AccessForm sending={sending} onSend={choose}>
      {proof === 'set-up-code' && (
        <TextField
          label="Set-up code"
          name="code"
          pointer="/setUpCode"
          problem={problem}
          hint="The daemon printed it when it started; it looks like 7KQ2-9WHD-4TXM"
        />
      )}
      {proof === 'current-pin' && (
        <PinField
          label="Current PIN"
          name="current"
          isNew={false}
          pointer="/currentPin"
          problem={problem}
        />
      )}
      <PinField
        label="New PIN"
        name="new"
        isNew
        pointer="/pin"
        problem={problem}
        hint="Six figures or letters at least, no row like 123456"
      />
      <button type="submit" class="button button-main">
        {whose === 'own' ? 'Set the PIN' : 'Set the second PIN'}
      </button>
    </AccessForm>
  );
}
