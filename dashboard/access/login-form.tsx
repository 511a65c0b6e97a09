import { useState } from 'preact/hooks';
import type { MadeMqttLogin } from '../../daemon/contract/mqtt-access.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useShed } from '../shed-context.ts';
import { AccessForm } from './access-form.tsx';

const kinds = [
  { value: 'node', words: 'Sends readings' },
  { value: 'listener', words: 'Only listens' },
  { value: 'forecaster', words: 'Sends a forecast' },
] as const;

/** Makes a name and a password for anything that is not one sensor. */
export function LoginForm({ onMade }: { onMade: (login: MadeMqttLogin) => void }) {
  const { api } = useShed();
  const sending = useSending();
  const [kind, setKind] = useState<(typeof kinds)[number]['value']>('node');
  const { problem } = sending;

  async function make(form: FormData): Promise<unknown> {
    const sensors = textOf(form, 'sensors')
      .split(/[\s,;]+/)
      .filter(Boolean);
    const login = await sending.send(() =>
      api.call('createMqttLogin', {
        body: { name: textOf(form, 'name'), kind, sensors: kind === 'node' ? sensors : [] },
      }),
    );
    if (login !== null) onMade(login);
    return login;
  }

  return (
    <AccessForm sending={sending} onSend={make}>
      <Choice legend="What it does" name="kind" options={kinds} value={kind} onChange={setKind} />
      <TextField
        label="User name"
        name="name"
        pointer="/name"
        problem={problem}
        hint="Letters, figures, dot, dash and underscore"
      />
      {kind === 'node' && (
        <TextField
          label="Sensors that it sends for"
          name="sensors"
          pointer="/sensors"
          problem={problem}
          hint="Their ids, with commas between"
        />
      )}
      <button type="submit" class="button">
        Make a name and a password
      </button>
    </AccessForm>
  );
}
