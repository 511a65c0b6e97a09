import { render } from 'preact';
import { createPinPrompt } from './access/pin-prompt.ts';
import { createApi, type Given } from './api.ts';
import { App } from './app.tsx';
import { createDeviceChoice } from './device-choice.ts';
import { keptChoice, ownStorage } from './kept-choice.ts';
import { createLive } from './live.ts';
import { keptEntries, keptReplies } from './offline/kept-store.ts';
import { createOutbox } from './offline/outbox.ts';
import { registerWorker } from './offline/register-worker.ts';
import { sendWhenPossible } from './offline/send-when-possible.ts';
import { createReaderChoice, type ReaderChoice } from './reader-choice.ts';
import { ReaderProvider } from './reader-provider.tsx';
import { watchBuild } from './screen/new-build.ts';
import { onWake } from './screen/waking.ts';
import { ShedContext } from './shed-context.ts';
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

/** The question for the PIN has a form and words that the first screen does without. */
async function askPin(): Promise<boolean> {
  try {
    await Promise.all([
      readerChoice?.fetchRest(),
      import('./access/pin-dialog.tsx'),
      import('./page-start.ts'),
    ]);
  } catch {
    // What cannot be asked was not answered; what waits for it is kept.
    return false;
  }
  return prompt.ask();
}
