import { render } from 'preact';
import { createPinPrompt } from './access/pin-prompt.ts';
import { createApi } from './api.ts';
import { App } from './app.tsx';
import { createCalendar } from './format/calendar.ts';
import { createLive } from './live.ts';
import { createReaderChoice, keptChoice } from './reader-choice.ts';
import { ReaderProvider } from './reader-provider.tsx';
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
import { keepTheme } from './theme.ts';

keepTheme(document.documentElement);
const prompt = createPinPrompt();
const api = createApi((input, init) => fetch(input, init), prompt.ask);
const live = createLive(api);
const root = document.getElementById('app');
void start();

/** The overview is on its way while the words of the reader are fetched. */
async function start(): Promise<void> {
  const readerChoice = await createReaderChoice(keptChoice(ownStorage()), navigator.languages);
  if (root === null) return;
  render(
    <ShedContext.Provider value={{ api, live, calendar: createCalendar(), prompt, readerChoice }}>
      <ReaderProvider>
        <App />
      </ReaderProvider>
    </ShedContext.Provider>,
    root,
  );
}

/** null where the browser forbids it. */
function ownStorage(): Storage | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}
