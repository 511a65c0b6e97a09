import { builtInName } from '../daemon/wording/built-in-name.ts';
import { useReader } from './reader.ts';

/**
 * Names of coats and plans: those that came with the program in the reader’s language, those that
 * somebody wrote as they were written.
 */
export function useOwnName(): (name: string) => string {
  const { say } = useReader();
  return (name) => say(builtInName(name));
}
