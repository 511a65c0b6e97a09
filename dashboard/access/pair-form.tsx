import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useShed } from '../shed-context.ts';
import { AccessForm } from './access-form.tsx';

/** Pairs the device that shows this page, with a code made on another. */
export function PairForm({ onPaired }: { onPaired: () => void }) {
  const { api } = useShed();
  const sending = useSending();

  async function pair(form: FormData): Promise<unknown> {
    const session = await sending.send(() =>
      api.call('pairTablet', { body: { code: textOf(form, 'code') } }),
    );
    if (session !== null) onPaired();
    return session;
  }

  return (
    <AccessForm sending={sending} onSend={pair}>
      <TextField
        label="Pairing code"
        name="code"
        pointer="/code"
        problem={sending.problem}
        hint="Made under Access on a device that is logged in; good for ten minutes"
      />
      <button type="submit" class="button">
        Pair this device
      </button>
    </AccessForm>
  );
}
