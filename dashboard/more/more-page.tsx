import { ReaderForm } from './reader-form.tsx';

const doors = [
  { address: '#/season', words: 'The seasons', says: 'What became of the coats so far' },
  {
    address: '#/topics',
    words: 'Sensors of other makes',
    says: 'Messages that nobody knows yet, and the rules that turn them into readings',
  },
  { address: '#/cautions', words: 'Cautions', says: 'Rags, vapour, dust, lead and heaters' },
  { address: '#/api', words: 'API', says: 'Every route, for whoever writes programs' },
] as const;

/** The doors that are seldom opened. */
export function MorePage() {
  return (
    <main class="page more-page">
      <h1>More</h1>
      <ul class="doors">
        {doors.map(({ address, words, says }) => (
          <li key={address}>
            <a href={address}>{words}</a>
            <p>{says}</p>
          </li>
        ))}
      </ul>
      <ReaderForm />
    </main>
  );
}
