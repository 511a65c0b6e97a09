import { useEffect, useRef, useState } from 'preact/hooks';
import { AwayBanner } from './away-banner.tsx';
import { focusHeading } from './focus.ts';
import { later, laterPart } from './later.tsx';
import { WaitingBar } from './offline/waiting-bar.tsx';
import { PageFoot } from './page-foot.tsx';
import { PageHead } from './page-head.tsx';
import { useReader } from './reader.ts';
import { type Page, pageKey, pageOf } from './router.ts';
import { useShed } from './shed-context.ts';
import { WallPage } from './wall/wall-page.tsx';

const AirPage = later(async () => (await import('./air/air-page.tsx')).AirPage);
const AccessPage = later(async () => (await import('./access/access-page.tsx')).AccessPage);
const BatchPage = later(async () => (await import('./batch/batch-page.tsx')).BatchPage);
const CautionsPage = later(async () => (await import('./cautions/cautions-page.tsx')).CautionsPage);
const MorePage = later(async () => (await import('./more/more-page.tsx')).MorePage);
const WaitingPage = later(async () => (await import('./offline/waiting-page.tsx')).WaitingPage);
const SetupPage = later(async () => (await import('./setup/setup-page.tsx')).SetupPage);
const FirstRunPage = later(
  async () => (await import('./first-run/first-run-page.tsx')).FirstRunPage,
);
const RecordsPage = later(async () => (await import('./records/records-page.tsx')).RecordsPage);
const SettingsPage = later(
  async () => (await import('./settings-page/settings-page.tsx')).SettingsPage,
);
const CoatingPage = later(async () => (await import('./trade/coating-page.tsx')).CoatingPage);
const RoundPage = later(async () => (await import('./trade/round-page.tsx')).RoundPage);
const BrushPage = later(async () => (await import('./brush/brush-page.tsx')).BrushPage);
const PotPage = later(async () => (await import('./pot/pot-page.tsx')).PotPage);
const LockUpPage = later(async () => (await import('./lock-up/lock-up-page.tsx')).LockUpPage);
const NoticesPage = later(async () => (await import('./notices/notices-page.tsx')).NoticesPage);
const AheadPage = later(async () => (await import('./ahead/ahead-page.tsx')).AheadPage);
const ApiPage = later(async () => (await import('./api-page/api-page.tsx')).ApiPage);
const ReportPage = later(async () => (await import('./report/report-page.tsx')).ReportPage);
const SeasonPage = later(async () => (await import('./report/season-page.tsx')).SeasonPage);
const TopicsPage = later(async () => (await import('./topics/topics-page.tsx')).TopicsPage);
const PrintPage = later(async () => (await import('./print/print-page.tsx')).PrintPage);

const PinDialog = laterPart(async () => (await import('./access/pin-dialog.tsx')).PinDialog);

/** The whole app: head, the page that the address names, foot. */
export function App() {
  const named = usePage();
  const { live, prompt } = useShed();
  // Where looking needs a log-in there is nothing else to show.
  const page: Page = live.isLocked.value ? { kind: 'access' } : named;
  const { frame } = useReader().words;
  useHeadingFocus(pageKey(page));
  return (
    <div class={`app app-${page.kind}`}>
      <button type="button" class="skip-link" onClick={() => focusHeading()}>
        {frame.skip}
      </button>
      <AwayBanner />
      <WaitingBar />
      <PageHead page={page} />
      <Shown page={page} />
      {page.kind !== 'wall' && <PageFoot />}
      {prompt.asked.value && <PinDialog />}
    </div>
  );
}

function Shown({ page }: { page: Page }) {
  switch (page.kind) {
    case 'wall':
      return <WallPage />;
    case 'batch':
      return <BatchPage key={page.id} id={page.id} />;
    case 'report':
      return <ReportPage key={page.id} id={page.id} />;
    case 'coating':
      return <CoatingPage key={page.id} id={page.id} />;
    case 'round':
      return <RoundPage />;
    case 'season':
      return <SeasonPage />;
    case 'air':
      return <AirPage key={page.placeId} placeId={page.placeId} given={page.given} />;
    case 'ahead':
      return <AheadPage />;
    case 'brush':
      return <BrushPage />;
    case 'pot':
      return <PotPage />;
    case 'lock-up':
      return <LockUpPage />;
    case 'notices':
      return <NoticesPage />;
    case 'print':
      return <PrintPage sheet={page.sheet} given={page.given} />;
    case 'setup':
      return <SetupPage />;
    case 'first-run':
      return <FirstRunPage step={page.step} />;
    case 'records':
      return <RecordsPage given={page.given} />;
    case 'settings':
      return <SettingsPage section={page.section} />;
    case 'topics':
      return <TopicsPage key={page.from} from={page.from} />;
    case 'access':
      return <AccessPage />;
    case 'more':
      return <MorePage />;
    case 'waiting':
      return <WaitingPage />;
    case 'api':
      return <ApiPage />;
    case 'cautions':
      return <CautionsPage />;
    case 'unknown':
      return <UnknownPage path={page.path} />;
  }
}

function UnknownPage({ path }: { path: string }) {
  const { frame } = useReader().words;
  return (
    <main class="page">
      <h1>{frame.noSuchPage}</h1>
      <p>{frame.nothingAt(<code>#{path}</code>, <a href="#/">{frame.toTheWall}</a>)}</p>
    </main>
  );
}

/** After another page has come up the focus is at its heading; at the first one it stays where it is. */
function useHeadingFocus(key: string): void {
  const before = useRef(key);
  useEffect(() => {
    if (before.current === key) return;
    before.current = key;
    return focusHeading();
  }, [key]);
}

function usePage(): Page {
  const [page, setPage] = useState(() => pageOf(location.hash));
  useEffect(() => {
    const turn = () => {
      setPage(pageOf(location.hash));
      scrollTo(0, 0);
    };
    addEventListener('hashchange', turn);
    // The address may have changed between the first drawing and this moment.
    setPage(pageOf(location.hash));
    return () => removeEventListener('hashchange', turn);
  }, []);
  return page;
}
