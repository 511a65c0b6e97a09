import { useState } from 'preact/hooks';
import type { MadeMqttLogin, MqttLogin } from '../../daemon/contract/mqtt-access.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { AccessForm } from './access-form.tsx';

const kinds: readonly MqttLogin['kind'][] = ['node', 'listener', 'forecaster'];

/** Makes a name and a password for anything that is not one sensor. */
export function LoginForm({ onMade }: { onMade: (login: MadeMqttLogin) => void }) {
  const { api } = useShed();
  const { broker } = useReader().words.access;
  const sending = useSending();
  const [kind, setKind] = useState<MqttLogin['kind']>('node');
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
      <Choice
        legend={broker.does}
        name="kind"
        options={kinds.map((value) => ({ value, words: broker.kinds[value] }))}
        value={kind}
        onChange={setKind}
      />
      <TextField
        label={broker.userName}
        name="name"
        pointer="/name"
        problem={problem}
        hint={broker.userNameHint}
      />
      {kind === 'node' && (
        <TextField
          label={broker.sendsFor}
          name="sensors"
          pointer="/sensors"
          problem={problem}
          hint={broker.sendsForHint}
        />
      )}
      <button type="submit" class="button">
        {broker.makeLogin}
      </button>
    </AccessForm>
  );
}
