import { useReader } from '../reader.ts';
import { ReaderForm } from './reader-form.tsx';
import { ScreenForm } from './screen-form.tsx';

const doors = [
  { address: '#/records', name: 'records' },
  { address: '#/season', name: 'season' },
  { address: '#/settings', name: 'settings' },
  { address: '#/topics', name: 'topics' },
  { address: '#/first-run', name: 'firstRun' },
  { address: '#/cautions', name: 'cautions' },
  { address: '#/api', name: 'api' },
] as const;

/** The doors that are seldom opened. */
export function MorePage() {
  const { more } = useReader().words;
  return (
    <main class="page more-page">
      <h1>{more.title}</h1>
      <ul class="doors">
        {doors.map(({ address, name }) => (
          <li key={address}>
            <a href={address}>{more.doors[name].name}</a>
            <p>{more.doors[name].says}</p>
          </li>
        ))}
      </ul>
      <ReaderForm />
      <ScreenForm />
    </main>
  );
}
