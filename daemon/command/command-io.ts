/** What a command may touch of the process that runs it. */
export interface CommandIo {
  /** One line for programs: JSON. */
  stdout(line: string): void;
  /** One line for people. */
  stderr(line: string): void;
  env: NodeJS.ProcessEnv;
  cwd: string;
  /** Aborted when the process is asked to stop. */
  stop: AbortSignal;
  /** Has this done each time that the process is asked to read its settings anew. */
  onReload?(act: () => void): void;
}
