import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { AccessForm } from './access-form.tsx';

/** Pairs the device that shows this page, with a code made on another. */
export function PairForm({ onPaired }: { onPaired: () => void }) {
  const { api } = useShed();
  const { pairing } = useReader().words.access;
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
        label={pairing.code}
        name="code"
        pointer="/code"
        problem={sending.problem}
        hint={pairing.codeHint}
      />
      <button type="submit" class="button">
        {pairing.pair}
      </button>
    </AccessForm>
  );
}
