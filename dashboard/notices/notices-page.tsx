import { useCallback, useEffect } from 'preact/hooks';
import type { Notice } from '../../daemon/contract/notice.ts';
import type { NoticeChannels } from '../../daemon/contract/notice-channel.ts';
import { lengthOf } from '../format/painters-time.ts';
import { MISSING } from '../format/reader-figures.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

const HOUR_MS = 3_600_000;

/** The one list of what wants attention and what did, and how it is told. */
export function NoticesPage() {
  const { api, live } = useShed();
  const { words } = useReader();
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
      <h1>{words.notices.title}</h1>
      {notices.replied.kind === 'failed' && <ProblemNote problem={notices.replied.problem} />}
      {notices.replied.kind === 'there' && (
        <>
          <section aria-labelledby="open-title">
            <h2 id="open-title">{words.notices.open}</h2>
            {open.length === 0 && <p>{words.notices.none}</p>}
            <ul class="notice-rows">
              {open.map((notice) => (
                <OpenNotice key={notice.id} notice={notice} onSeen={again} />
              ))}
            </ul>
          </section>
          {cleared.length > 0 && (
            <section aria-labelledby="cleared-title">
              <h2 id="cleared-title">{words.notices.over}</h2>
              <ul class="notice-rows">
                {cleared.slice(0, 50).map((notice) => (
                  <li key={notice.id}>
                    <Subject notice={notice} />
                    <p>
                      <Said sentence={notice} />
                    </p>
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
  const { words } = useReader();
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
      <p>
        <Said sentence={notice} />
      </p>
      <Times notice={notice} />
      {notice.kind === 'rags' && (
        <p>{words.notices.tickRags(<a href="#/lock-up">{words.notices.tickRagsLink}</a>)}</p>
      )}
      {mayWrite && notice.seenAt === null && (
        <button
          type="button"
          class="button button-quiet"
          aria-disabled={sending.busy}
          onClick={() => void seen()}
        >
          {words.notices.seen}
        </button>
      )}
      <ProblemNote problem={sending.problem} />
    </li>
  );
}

/** The boards it is about, where the text does not name them: four racks may want their rags seen to. */
function Subject({ notice }: { notice: Notice }) {
  const { live } = useShed();
  const { say } = useReader();
  const about = live.overview.value?.places
    .flatMap((place) => place.batches)
    .find(({ id }) => id === notice.subject);
  if (!about || say(notice).includes(about.name)) return null;
  return (
    <p>
      <a href={batchAddress(about.id)}>{about.name}</a>
    </p>
  );
}

function Times({ notice }: { notice: Notice }) {
  const { words, calendar, figures } = useReader();
  const { times: became } = words.notices;
  const said = (moment: string) => calendar.exact(Date.parse(moment));
  const times = [
    became.raised(said(notice.raisedAt)),
    notice.repeatedAt === null
      ? null
      : became.toldAgain(figures.number(notice.repeats), said(notice.repeatedAt)),
    notice.seenAt === null ? null : became.seen(said(notice.seenAt)),
    notice.clearedAt === null ? null : became.over(said(notice.clearedAt)),
  ];
  return <p class="quiet">{times.filter((time) => time !== null).join('; ')}</p>;
}

function Channels({ told }: { told: NoticeChannels }) {
  const { words, calendar, figures } = useReader();
  const { times } = words;
  const { channels } = words.notices;
  const { quietHours, digestAt, timeZone } = told;
  return (
    <section aria-labelledby="channels-title">
      <h2 id="channels-title">{channels.title}</h2>
      <table class="figures folding-table">
        <thead>
          <tr>
            <th scope="col">{channels.by}</th>
            <th scope="col">{channels.to}</th>
            <th scope="col">{channels.quietHours}</th>
            <th scope="col">{channels.onTheirWay}</th>
            <th scope="col">{channels.lastArrived}</th>
          </tr>
        </thead>
        <tbody>
          {told.channels.map((one) => (
            <tr key={one.channel}>
              <th scope="row">{channels.names[one.channel]}</th>
              <td data-label={channels.folded(channels.to)}>
                {one.on ? (one.target ?? channels.ownBroker) : channels.notSetUp}
              </td>
              <td data-label={channels.folded(channels.quietHours)}>
                {one.on ? (one.heedsQuietHours ? channels.held : channels.told) : MISSING}
              </td>
              <td data-label={channels.folded(channels.onTheirWay)}>
                {one.givenUp > 0
                  ? channels.waitingGivenUp(
                      figures.number(one.waiting),
                      figures.number(one.givenUp),
                    )
                  : figures.number(one.waiting)}
                {one.lastError !== null && (
                  <span class="field-fault">
                    {' '}
                    <Said
                      sentence={one.lastErrorSaid ?? { code: 'delivery', text: one.lastError }}
                    />
                  </span>
                )}
              </td>
              <td data-label={channels.folded(channels.lastArrived)}>
                {one.sentAt === null ? MISSING : calendar.exact(Date.parse(one.sentAt))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="footnote">
        {quietHours === null
          ? channels.noQuietHours
          : channels.quietFrom(quietHours.from, quietHours.to, timeZone)}{' '}
        {digestAt === null ? channels.noDigest : channels.digestAt(digestAt)}{' '}
        {channels.ragsRepeated(times.length(lengthOf(told.ragRepeatHours * HOUR_MS)))}{' '}
        {channels.settings(<code>notices</code>)}
      </p>
    </section>
  );
}
