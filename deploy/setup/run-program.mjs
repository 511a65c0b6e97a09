import { spawn } from 'node:child_process';

/**
 * Runs a program to its end, with what it prints on our standard error.
 *
 * @param {string} program
 * @param {string[]} args
 * @param {{ cwd: string, env?: Record<string, string | undefined>, shell?: boolean }} options
 * @returns {Promise<string | null>} null when it ended with 0, otherwise how it ended
 */
export function runProgram(program, args, options) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { ...options, stdio: ['ignore', 2, 2] });
    child.once('error', (error) => resolve(error.message));
    child.once('close', (code, signal) => {
      resolve(code === 0 ? null : signal === null ? `exit code ${code}` : `signal ${signal}`);
    });
  });
}
