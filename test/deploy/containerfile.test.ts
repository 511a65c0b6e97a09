import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { validate } from 'dockerfile-utils';
import { describe, expect, it } from 'vitest';

const DEPLOY = join(import.meta.dirname, '../../deploy');
const text = readFileSync(join(DEPLOY, 'Containerfile'), 'utf8');
const words = (file: string) => validate(file).map(({ message }) => message);

/** Instructions with their lines joined, without comments. */
const instructions = text
  .replace(/\\\n(?:\s*#.*\n)*/g, ' ')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'));
const last = instructions.slice(instructions.findLastIndex((line) => line.startsWith('FROM ')));

// No engine runs here: what can be told of the file without one. The linter is that of a language server.
describe('the container file', () => {
  it('has nothing that its linter would mend', () => {
    expect(words(text)).toEqual([]);
  });

  it('would be refused with a misspelt word, or a folder that hangs on another', () => {
    expect(words(text.replace('EXPOSE', 'EXPOSES'))).toEqual(['Unknown instruction: EXPOSES']);
    expect(words(text.replace('WORKDIR /src', 'WORKDIR src'))).toEqual([
      'WORKDIR paths should be absolute',
    ]);
  });

  it('runs as a user who is not root, with a look at its health, from a base that is named', () => {
    expect(last.filter((line) => line.startsWith('USER '))).toEqual(['USER boardcure']);
    expect(last.findIndex((line) => line.startsWith('USER '))).toBeLessThan(
      last.findIndex((line) => line.startsWith('ENTRYPOINT ')),
    );
    expect(last.filter((line) => line.startsWith('HEALTHCHECK '))).toHaveLength(1);
    for (const line of instructions.filter((one) => one.startsWith('FROM '))) {
      expect(line).toMatch(/^FROM docker\.io\/library\/node:\d+-\w+-slim( AS \w+)?$/);
    }
  });

  it('takes nothing of this computer along', () => {
    const left = readFileSync(join(DEPLOY, 'Containerfile.dockerignore'), 'utf8').split('\n');
    const made = readFileSync(join(DEPLOY, '../.gitignore'), 'utf8').split('\n');
    for (const folder of made.filter((line) => line.startsWith('/'))) {
      expect(left).toContain(folder.replaceAll('/', ''));
    }
  });
});
