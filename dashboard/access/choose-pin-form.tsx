import type { Session } from '../../daemon/contract/access.ts';
import { TextField } from '../forms/field.tsx';
import { PinField } from '../forms/pin-field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
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
  const { choosePin } = useReader().words.access;
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
          label={choosePin.code}
          name="code"
          pointer="/setUpCode"
          problem={problem}
          hint={choosePin.codeHint}
        />
      )}
      {proof === 'current-pin' && (
        <PinField
          label={choosePin.current}
          name="current"
          isNew={false}
          pointer="/currentPin"
          problem={problem}
        />
      )}
      <PinField
        label={choosePin.fresh}
        name="new"
        isNew
        pointer="/pin"
        problem={problem}
        hint={choosePin.freshHint}
      />
      <button type="submit" class="button button-main">
        {whose === 'own' ? choosePin.set : choosePin.setSecond}
      </button>
    </AccessForm>
  );
}
