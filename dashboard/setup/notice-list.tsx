import type { Overview } from '../../daemon/contract/overview.ts';
import { agoOf } from '../format/painters-time.ts';
import { useSending } from '../forms/use-sending.ts';
import { mayTry } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';

type Notice = Overview['notices'][number];

/** What wants attention and was not yet seen. */
export function NoticeList({ overview }: { overview: Overview }) {
  const { attention } = useReader().words.setup;
  const open = overview.notices.filter(
    (notice) => notice.clearedAt === null && notice.seenAt === null,
  );
  if (open.length === 0) return null;
  return (
    <section class="notices" aria-labelledby="notice-title">
      <h2 id="notice-title">{attention.title}</h2>
      <ul>
        {open.map((notice) => (
          <NoticeEntry key={notice.id} notice={notice} mayWrite={mayTry(overview)} />
        ))}
      </ul>
    </section>
  );
}

function NoticeEntry({ notice, mayWrite }: { notice: Notice; mayWrite: boolean }) {
  const { api, live } = useShed();
  const { words } = useReader();
  const sending = useSending();

  async function seen(): Promise<void> {
    const changed = await sending.send(() =>
      api.call('changeNotice', { params: { id: notice.id }, body: { seen: true } }),
    );
    if (changed !== null) await live.refresh();
  }

  return (
    <li>
      <p>
        <Said sentence={notice} />
      </p>
      <p class="quiet">{words.times.ago(agoOf(Date.parse(notice.raisedAt), live.now.value))}</p>
      {mayWrite && (
        <button
          type="button"
          class="button button-quiet"
          aria-disabled={sending.busy}
          onClick={() => void seen()}
        >
          {words.setup.attention.seen}
        </button>
      )}
    </li>
  );
}
