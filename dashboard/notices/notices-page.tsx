import { useCallback, useEffect } from 'preact/hooks';
import type { Notice } from '../../daemon/contract/notice.ts';
import type { NoticeChannels } from '../../daemon/contract/notice-channel.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

/** The one list of what wants attention and what did, and how it is told. */
export function NoticesPage() {
  const { api, live } = useShed();
  const notices = useReply(useCallback(() => api.call('listNotices', {}), [api]));
  const channels = useReply(useCallback(() => api.call('readNoticeChannels', {}), [api]));
  const overview = live.overview.value;
  const openIds = (overview?.notices ?? []).map(({ id }) => id).join(' ');
  const { again } = notices;
  // Whatever is raised or seen elsewhere shows in the overview first.
  useEffect(again, [openIds]);
  const all = notices.replied.kind === 'there' ? notices.replied.reply : [];
  const open = all.filter(({ clearedAt }) => clearedAt === null);
  const cleared = all.filter(({ clearedAt }) => clearedAt !== null);
  return (
    <main class="page notices-page">
      <h1>Notices</h1>
      {notices.replied.kind === 'failed' && <ProblemNote problem={notices.replied.problem} />}
      {notices.replied.kind === 'there' && (
        <>
          <section aria-labelledby="open-title">
            <h2 id="open-title">Open</h2>
            {open.length === 0 && <p>Nothing wants attention.</p>}
            <ul class="notice-rows">
              {open.map((notice) => (
                <OpenNotice key={notice.id} notice={notice} onSeen={again} />
              ))}
            </ul>
          </section>
          {cleared.length > 0 && (
            <section aria-labelledby="cleared-title">
              <h2 id="cleared-title">Over</h2>
              <ul class="notice-rows">
                {cleared.slice(0, 50).map((notice) => (
                  <li key={notice.id}>
                    <Subject notice={notice} />
                    <p>{notice.text}</p>
                    <Times notice={notice} />
                  </li>
                ))}
              </ul>
            </section>
          )}
        </>
      )}
      {channels.replied.kind === 'there' && <Channels told={channels.replied.reply} />}
    </main>
  );
}

function OpenNotice({ notice, onSeen }: { notice: Notice; onSeen: () => void }) {
  const { api, live } = useShed();
  const sending = useSending();
  const mayWrite = live.overview.value?.mayWrite === true;

  async function seen(): Promise<void> {
    const changed = await sending.send(() =>
      api.call('changeNotice', { params: { id: notice.id }, body: { seen: true } }),
    );
    if (changed === null) return;
    onSeen();
    await live.refresh();
  }

  return (
    <li class={notice.seenAt === null ? 'notice-unseen' : ''}>
      <Subject notice={notice} />
      <p>{notice.text}</p>
      <Times notice={notice} />
      {notice.kind === 'rags' && (
        <p>
          <a href="#/lock-up">Tick it on the lock-up list</a>: until then it comes again.
        </p>
      )}
      {mayWrite && notice.seenAt === null && (
        <button
          type="button"
          class="button button-quiet"
          disabled={sending.busy}
          onClick={() => void seen()}
        >
          Seen
        </button>
      )}
      <ProblemNote problem={sending.problem} />
    </li>
  );
}

/** The boards it is about, where the text does not name them: four racks may want their rags seen to. */
function Subject({ notice }: { notice: Notice }) {
  const { live } = useShed();
  const about = live.overview.value?.places
    .flatMap((place) => place.batches)
    .find(({ id }) => id === notice.subject);
  if (!about || notice.text.includes(about.name)) return null;
  return (
    <p>
      <a href={batchAddress(about.id)}>{about.name}</a>
    </p>
  );
}

function Times({ notice }: { notice: Notice }) {
  const { calendar } = useShed();
  const said = (moment: string) => calendar.exact(Date.parse(moment));
  const times = [
    `raised ${said(notice.raisedAt)}`,
    notice.repeatedAt === null
      ? null
      : `told again ${notice.repeats} ×, last ${said(notice.repeatedAt)}`,
    notice.seenAt === null ? null : `seen ${said(notice.seenAt)}`,
    notice.clearedAt === null ? null : `over ${said(notice.clearedAt)}`,
  ];
  return <p class="quiet">{times.filter((time) => time !== null).join('; ')}</p>;
}

const channelWords = { mqtt: 'MQTT', webhook: 'Webhook', mail: 'E-mail' } as const;

function Channels({ told }: { told: NoticeChannels }) {
  const { calendar } = useShed();
  const { quietHours, digestAt, timeZone } = told;
  return (
    <section aria-labelledby="channels-title">
      <h2 id="channels-title">How they are told</h2>
      <table class="figures folding-table">
        <thead>
          <tr>
            <th scope="col">By</th>
            <th scope="col">To</th>
            <th scope="col">Quiet hours</th>
            <th scope="col">On their way</th>
            <th scope="col">Last arrived</th>
          </tr>
        </thead>
        <tbody>
          {told.channels.map((one) => (
            <tr key={one.channel}>
              <th scope="row">{channelWords[one.channel]}</th>
              <td data-label="To:">{one.on ? (one.target ?? 'the broker') : 'not set up'}</td>
              <td data-label="Quiet hours:">
                {one.on ? (one.heedsQuietHours ? 'held' : 'told') : '–'}
              </td>
              <td data-label="On their way:">
                {one.waiting}
                {one.givenUp > 0 && `, ${one.givenUp} given up`}
                {one.lastError !== null && <span class="field-fault"> {one.lastError}</span>}
              </td>
              <td data-label="Last arrived:">
                {one.sentAt === null ? '–' : calendar.exact(Date.parse(one.sentAt))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="footnote">
        {quietHours === null
          ? 'No quiet hours.'
          : `Quiet from ${quietHours.from} to ${quietHours.to} (${timeZone}); rags, vapour and overheating are told at any hour.`}{' '}
        {digestAt === null ? 'No morning digest.' : `The morning is summed up at ${digestAt}.`} The
        rag line is told again every {told.ragRepeatHours} h on the first day. All of it stands in
        the settings file, section <code>notices</code>.
      </p>
    </section>
  );
}
