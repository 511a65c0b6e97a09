import { BackupRefusal, copyDatabase, type WholeCopy } from './backup-copy.ts';

/** What the process of a nightly backup says before it ends. */
export type BackupAnswer =
  | { kind: 'done'; copy: WholeCopy }
  | { kind: 'refused' | 'failed'; message: string };

/** The process that copies by night; it ends with the daemon that started it. */
async function copyAndTell(): Promise<void> {
  const [source, target] = process.argv.slice(2);
  process.once('disconnect', () => process.exit(1));
  const answer = await copyOf(source ?? '', target ?? '');
  process.send?.(answer, () => process.exit(answer.kind === 'done' ? 0 : 1));
}

async function copyOf(source: string, target: string): Promise<BackupAnswer> {
  try {
    return { kind: 'done', copy: await copyDatabase(source, target) };
  } catch (cause) {
    const message = cause instanceof Error ? cause.message : String(cause);
    return { kind: cause instanceof BackupRefusal ? 'refused' : 'failed', message };
  }
}

await copyAndTell();
