import type { SettingList } from '../../daemon/contract/setting.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { mayTry } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';

interface SetAsideProps {
  list: Pick<SettingList, 'chosenFault' | 'setAside'>;
  /** Told once something was let go of. */
  onKept: () => void;
}

/** What was chosen here and does not hold, and why. */
export function SetAside({ list, onKept }: SetAsideProps) {
  const { api, live } = useShed();
  const { settings: said } = useReader().words;
  const sending = useSending();
  if (list.chosenFault === null && list.setAside.length === 0) return null;

  async function letGo(name: string): Promise<void> {
    const body = { settings: { [name]: null } };
    if ((await sending.send(() => api.call('changeSettings', { body }))) !== null) onKept();
  }

  return (
    <section class="setting-aside" aria-labelledby="setting-aside">
      <h2 id="setting-aside">{said.aside}</h2>
      {list.chosenFault !== null && (
        <p class="field-fault">
          <Said sentence={list.chosenFault} />
        </p>
      )}
      <ul>
        {list.setAside.map(({ name, value, because }) => (
          <li key={name}>
            <p>
              <code>{value === null ? name : `${name} = ${JSON.stringify(value)}`}</code>{' '}
              <span class="field-fault">
                <Said sentence={because} />
              </span>
            </p>
            <button
              type="button"
              class="button button-quiet"
              disabled={sending.busy || !mayTry(live.overview.value)}
              aria-label={said.letGoOf(name)}
              onClick={() => void letGo(name)}
            >
              {said.letGo}
            </button>
          </li>
        ))}
      </ul>
      <ProblemNote problem={sending.problem} />
    </section>
  );
}
