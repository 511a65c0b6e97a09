import type { FastifyInstance, FastifyReply } from 'fastify';
import { BoardcureError } from '../contract/problem.ts';
import type { StreamEvent } from '../contract/stream-event.ts';
import type { HttpParts } from './ports.ts';
import { siteOverview } from './routes/site.ts';
import { isFromHere } from './write-access.ts';

/** Changes closer together than this reach a page as one. */
const gatherMs = 250;

/**
 * `GET /api/v1/stream`: the overview at once and after every change, and which batch was edited.
 *
 * @returns how to end all streams
 */
export function streamRoute(app: FastifyInstance, parts: HttpParts): () => void {
  const open = new Set<OpenPage>();
  let gathering: NodeJS.Timeout | null = null;

  function pushOverview(): void {
    gathering = null;
    try {
      const overview = siteOverview(parts);
      const text = (mayWrite: boolean) =>
        eventText({ kind: 'overview', overview: { ...overview, mayWrite } });
      // Made once and not for each page: an overview has some ten thousand letters.
      const [own, others] = [text(true), text(false)];
      for (const page of open) page.push('', page.own ? own : others);
    } catch (cause) {
      // Outside of any request: what is asked next answers with the same fault.
      parts.log.error({ cause: String(cause) }, 'the overview could not be sent');
    }
  }

  const stop = parts.onChange((batchId) => {
    if (open.size === 0) return;
    if (batchId !== null) {
      const text = eventText({ kind: 'batch-changed', batchId });
      for (const page of open) page.push(batchId, text);
    }
    gathering ??= setTimeout(pushOverview, gatherMs);
  });

  app.get(
    '/api/v1/stream',
    {
      sse: 'manual',
      // Its answer would never end.
      exposeHeadRoute: false,
      schema: {
        operationId: 'stream',
        summary: 'Server-sent events: the overview whenever it changes',
      },
    },
    async (request, reply) => {
      if (open.size >= parts.maxStreams()) {
        throw new BoardcureError(
          'BC_TOO_MANY_STREAMS',
          `${open.size} pages listen already, as many as http.maxStreams allows.`,
        );
      }
      const page = openPage(reply, isFromHere(request));
      reply.sse.keepAlive();
      open.add(page);
      parts.metrics?.pagesListen(open.size);
      reply.sse.onClose(() => {
        open.delete(page);
        parts.metrics?.pagesListen(open.size);
      });
      const overview = { ...siteOverview(parts), mayWrite: page.own };
      page.push('', eventText({ kind: 'overview', overview }));
    },
  );

  return () => {
    stop();
    if (gathering) clearTimeout(gathering);
    for (const page of open) page.close();
    open.clear();
  };
}

/** JSON has no line break of its own: one line of the stream. */
const eventText = (event: StreamEvent): string => JSON.stringify(event);

interface OpenPage {
  own: boolean;
  push(subject: string, event: string): void;
  close(): void;
}

/**
 * One page that listens. While it is too slow to take what was sent, only the newest event of each
 * subject waits for it: a tablet that sleeps costs no memory.
 */
function openPage(reply: FastifyReply, own: boolean): OpenPage {
  const waiting = new Map<string, string>();
  let sending = false;
  const close = () => reply.sse.close();

  async function sendWaiting(): Promise<void> {
    sending = true;
    for (const [subject, data] of waiting) {
      waiting.delete(subject);
      await reply.sse.send(data);
    }
    sending = false;
  }

  return {
    own,
    push(subject, event): void {
      waiting.set(subject, event);
      if (!sending && reply.sse.isConnected) sendWaiting().catch(close);
    },
    close,
  };
}
