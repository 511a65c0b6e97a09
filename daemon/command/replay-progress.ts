import { Presets, SingleBar } from 'cli-progress';

/** Shows how far a replay is. */
export interface Progress {
  /** @param share - 0 to 1 of the file; `acknowledged` readings so far */
  show(share: number, acknowledged: number): void;
  /** A line for people, without tearing the bar. */
  say(line: string): void;
  close(): void;
}

/**
 * A bar on a terminal, a line at every tenth elsewhere.
 *
 * @param terminal - the stream of a terminal, or null
 * @param say - writes one line for people
 */
export function replayProgress(
  terminal: NodeJS.WriteStream | null,
  say: (line: string) => void,
): Progress {
  return terminal === null ? lines(say) : bar(terminal);
}

function lines(say: (line: string) => void): Progress {
  let tenths = 0;
  return {
    show(share, acknowledged) {
      const reached = Math.floor(share * 10);
      if (reached <= tenths) return;
      tenths = reached;
      say(`${reached * 10} % of the file, ${acknowledged} readings acknowledged`);
    },
    say,
    close: () => {},
  };
}

function bar(terminal: NodeJS.WriteStream): Progress {
  const single = new SingleBar(
    {
      stream: terminal,
      format: '{bar} {percentage} % · {acknowledged} readings acknowledged · {duration_formatted}',
      hideCursor: true,
      clearOnComplete: false,
    },
    Presets.shades_classic,
  );
  single.start(100, 0, { acknowledged: 0 });
  return {
    show: (share, acknowledged) => single.update(Math.floor(share * 100), { acknowledged }),
    say: (line) => {
      terminal.write(`\n${line}\n`);
    },
    close: () => single.stop(),
  };
}
