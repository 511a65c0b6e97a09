import { render } from 'preact';
import { createPinPrompt } from './access/pin-prompt.ts';
import { createApi, type Given } from './api.ts';
import { App } from './app.tsx';
import { createDeviceChoice } from './device-choice.ts';
import { createLive } from './live.ts';
import { keptEntries, keptReplies } from './offline/kept-store.ts';
import { createOutbox } from './offline/outbox.ts';
import { registerWorker } from './offline/register-worker.ts';
import { sendWhenPossible } from './offline/send-when-possible.ts';
import { createReaderChoice, keptChoice, type ReaderChoice } from './reader-choice.ts';
import { ReaderProvider } from './reader-provider.tsx';
import { watchBuild } from './screen/new-build.ts';
import { onWake } from './screen/waking.ts';
import { ShedContext } from './shed-context.ts';
import './styles/paint.css';
import './styles/ground.css';
import './styles/frame.css';
import './styles/board.css';
import './styles/wall.css';
import './styles/wall-sizes.css';
import './styles/batch.css';
import './styles/button.css';
import './styles/form.css';
import './styles/listing.css';
import './styles/trust.css';
import './styles/access.css';
import './styles/bench.css';
import './styles/print.css';
import './styles/ahead.css';
import './styles/report.css';
import './styles/topics.css';
import './styles/trade.css';
import './styles/offline.css';
import './styles/desk.css';
import { keepTheme } from './theme.ts';

const device = createDeviceChoice(ownStorage());
keepTheme(document.documentElement, device);
const prompt = createPinPrompt();
const heard = keptReplies();
let readerChoice: ReaderChoice | null = null;
const api = createApi((input, init) => fetch(input, init), askPin, heard);
const live = createLive(api, heard);
const outbox = createOutbox({
  store: keptEntries(),
  // The compiler held name and params together when the entry was made.
  send: ({ name, given }) => api.call(name, given as Given<typeof name>),
  clock: live.clock,
  after: (ms, act) => void setTimeout(act, ms),
});
sendWhenPossible(outbox, live);
registerWorker();
onWake(live.reopen);
watchBuild(live, document.querySelector('script[type=module][src]')?.getAttribute('src') ?? null);
const root = document.getElementById('app');
void start();

/** The overview is on its way while the words of the reader are fetched. */
async function start(): Promise<void> {
  const choice = await createReaderChoice(keptChoice(ownStorage()), navigator.languages);
  readerChoice = choice;
  if (root === null) return;
  render(
    <ShedContext.Provider
      value={{
        api,
        live,
        prompt,
        outbox,
        readerChoice: choice,
        device,
      }}
    >
      <ReaderProvider>
        <App />
      </ReaderProvider>
    </ShedContext.Provider>,
    root,
  );
}

/** The question for the PIN has words that the first screen does without. */
async function askPin(): Promise<boolean> {
  await readerChoice?.fetchRest().catch(() => {});
  return prompt.ask();
}

/** null where the browser forbids it. */
function ownStorage(): Storage | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}
