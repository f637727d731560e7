/** A line that says how far a long run is. */
export interface Progress {
  /** One more task is done. */
  step(): void;
  /** Prints a line above it. */
  say(line: string): void;
  /** Takes it away. */
  end(): void;
}

type Stream = Pick<NodeJS.WriteStream, 'isTTY' | 'write'>;

/** Faster than this nobody reads, in milliseconds. */
const PAUSE = 100;
const CLEAR = '\r\u001b[K';

/** Shows a bar on a terminal; anywhere else only the messages. */
export function showProgress(total: number, stream: Stream = process.stderr): Progress {
  const WIDTH = 30;
  let done = 0;
  let shown = Number.NEGATIVE_INFINITY;
  const clear = (): void => {
    if (stream.isTTY) stream.write(CLEAR);
  };
  return {
    step() {
      done++;
      const now = performance.now();
      if (!stream.isTTY || (done < total && now - shown < PAUSE)) return;
      shown = now;
      const filled = Math.floor((WIDTH * done) / total);
      stream.write(`${CLEAR}${'█'.repeat(filled)}${'░'.repeat(WIDTH - filled)} ${done} of ${total} texts`);
    },
    say(line) {
      clear();
      stream.write(`${line}\n`);
    },
    end: clear,
  };
}
