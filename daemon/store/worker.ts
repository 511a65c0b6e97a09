import { parentPort, workerData } from 'node:worker_threads';
import { BoardcureError } from '../contract/problem.ts';
import { isDiskFull } from './disk-full.ts';
import { openForWriting } from './open.ts';
import { type StoreWriter, storeWriter } from './store.ts';
import {
  doneReply,
  type ThreadReply,
  type ThreadRequest,
  type ThreadStart,
} from './thread-message.ts';

/** The thread that owns the write connection: it does what is asked, one after the other. */
function serve(): void {
  const port = parentPort;
  if (!port) throw new Error('The store’s worker was started outside a thread.');
  const { file, timeUnknownBit, maxSensors, posting } = workerData as ThreadStart;
  const writer = storeWriter(openForWriting(file), timeUnknownBit, maxSensors, posting);
  port.on('message', (request: ThreadRequest) => {
    port.postMessage(answer(request, writer, file));
    if (request.verb === 'close') port.close();
  });
  port.postMessage({ id: 0, kind: 'done', result: null } satisfies ThreadReply);
}

function answer(request: ThreadRequest, writer: StoreWriter, file: string): ThreadReply {
  const { id } = request;
  try {
    return doneReply(request, writer);
  } catch (cause) {
    if (cause instanceof BoardcureError) {
      return {
        id,
        kind: 'refused',
        code: cause.code,
        detail: cause.said ?? cause.message,
        pointer: cause.pointer,
      };
    }
    const message = cause instanceof Error ? cause.message : String(cause);
    if (isDiskFull(cause, file)) return { id, kind: 'full', message };
    return { id, kind: 'failed', message, stack: cause instanceof Error ? cause.stack : undefined };
  }
}

serve();
