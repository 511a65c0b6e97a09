import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { BoardcureError } from '../contract/problem.ts';
import type { StreamEvent } from '../contract/stream-event.ts';
import { mayDo } from '../rules/role.ts';
import { sentence } from '../wording/english.ts';
import { askerOf } from './access-gate.ts';
import { grants, type Writing, writingOf } from './asker-writing.ts';
import type { HttpParts } from './ports.ts';
import { siteOverview } from './routes/site.ts';

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
      // Made once for each grant and not for each page: it has some ten thousand letters.
      const texts = new Map<Writing['writing'], string>();
      for (const page of open) {
        const { writing } = page.grant;
        const text =
          texts.get(writing) ??
          eventText({ kind: 'overview', overview: { ...overview, ...grants[writing] } });
        texts.set(writing, text);
        page.push('', text);
      }
    } catch (cause) {
      // Outside of any request: what is asked next answers with the same fault.
      parts.log.error({ cause: String(cause) }, 'the overview could not be sent');
    }
  }

  /** Who lost access sees no more; who won it is told with the next overview. */
  function lookAgain(): void {
    for (const page of open) {
      const asker = askerOf(page.request, parts.access);
      if (mayDo(asker.role, 'look')) page.grant = writingOf(asker, parts.access);
      else page.close();
    }
    gathering ??= setTimeout(pushOverview, gatherMs);
  }

  const stopAccess = parts.access.onChange(lookAgain);
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
          sentence('too-many-pages', { pages: open.size }),
        );
      }
      const grant = writingOf(askerOf(request, parts.access), parts.access);
      const page = openPage(reply, request, grant);
      reply.sse.keepAlive();
      open.add(page);
      parts.metrics?.pagesListen(open.size);
      reply.sse.onClose(() => {
        open.delete(page);
        parts.metrics?.pagesListen(open.size);
      });
      const overview = { ...siteOverview(parts), ...page.grant };
      page.push('', eventText({ kind: 'overview', overview }));
    },
  );

  return () => {
    stop();
    stopAccess();
    if (gathering) clearTimeout(gathering);
    for (const page of open) page.close();
    open.clear();
  };
}

/** JSON has no line break of its own: one line of the stream. */
const eventText = (event: StreamEvent): string => JSON.stringify(event);

interface OpenPage {
  request: FastifyRequest;
  grant: Writing;
  push(subject: string, event: string): void;
  close(): void;
}

/**
 * One page that listens. While it is too slow to take what was sent, only the newest event of each
 * subject waits for it: a tablet that sleeps costs no memory.
 */
function openPage(reply: FastifyReply, request: FastifyRequest, grant: Writing): OpenPage {
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
    request,
    grant,
    push(subject, event): void {
      waiting.set(subject, event);
      if (!sending && reply.sse.isConnected) sendWaiting().catch(close);
    },
    close,
  };
}
