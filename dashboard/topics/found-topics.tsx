import { useCallback, useEffect, useState } from 'preact/hooks';
import type { Discovery } from '../../daemon/contract/found-topic.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { FoundTopicEntry } from './found-topic.tsx';

/** How often is looked whether something new came, ms. */
const LOOK_EVERY_MS = 3000;

interface FoundTopicsProps {
  overview: Overview;
  /** No more than these are shown; the others stand on the page of topics. */
  most?: number;
}

/** Topics that look like readings and that nobody knows yet. */
export function FoundTopics({ overview, most = Number.POSITIVE_INFINITY }: FoundTopicsProps) {
  const { api } = useShed();
  const words = useReader().words.topics.found;
  const { replied, again } = useReply(useCallback(() => api.call('foundTopics', {}), [api]));
  const [said, setSaid] = useState('');
  useEffect(() => {
    const looking = setInterval(again, LOOK_EVERY_MS);
    return () => clearInterval(looking);
  }, []);
  if (replied.kind !== 'there') return null;
  const { topics, otherTopics, leftOut, listening } = replied.reply;
  return (
    <>
      <p class="action-said found-said" role="status">
        {said}
      </p>
      {!listening.always && <Listening listening={listening} onChanged={again} />}
      {topics.length === 0 && (
        <p class="quiet">{otherTopics > 0 ? words.noneOthers(otherTopics) : words.none}</p>
      )}
      <ul class="sensor-list found-list">
        {topics.slice(0, most).map((found) => (
          <FoundTopicEntry
            key={found.topic}
            found={found}
            places={overview.places}
            onTaken={(taken) => {
              setSaid(taken);
              again();
            }}
          />
        ))}
      </ul>
      {topics.length > most && (
        <p>
          <a href="#/topics">{words.more(topics.length - most)}</a>
        </p>
      )}
      {leftOut > 0 && <p class="quiet">{words.leftOut(leftOut)}</p>}
    </>
  );
}

interface ListeningProps {
  listening: Discovery['listening'];
  onChanged: () => void;
}

/** Another broker may be a busy one: everything is listened to for a while only. */
function Listening({ listening, onChanged }: ListeningProps) {
  const { api } = useShed();
  const { words: all, calendar } = useReader();
  const words = all.topics.found;
  const sending = useSending();
  const { until, troubleSaid } = listening;
  async function turn(): Promise<void> {
    const minutes = until === null ? {} : { minutes: 0 };
    await sending.send(() => api.call('listenForTopics', { body: minutes }));
    onChanged();
  }
  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={turn}>
      <p>
        {until === null ? words.onRequest : words.listeningUntil(calendar.exact(Date.parse(until)))}
      </p>
      {troubleSaid !== null && (
        <p class="field-fault">
          <Said sentence={troubleSaid} />
        </p>
      )}
      <button type="submit" class="button">
        {until === null ? words.listen : words.stopListening}
      </button>
    </WriteFrame>
  );
}
