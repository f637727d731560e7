/** A line that shows the progress of a long run. */
export interface Progress {
  /** Counts one more task as done. */
  step(): void;
  /** Prints a message above the progress line. */
  say(line: string): void;
  /** Removes the progress line. */
  end(): void;
}

type Stream = Pick<NodeJS.WriteStream, 'isTTY' | 'write'>;

/** The shortest time between two updates, in milliseconds. Nobody reads faster. */
const PAUSE = 100;
const CLEAR = '\r\u001b[K';

/** Shows a progress bar on a terminal. Anywhere else only messages are printed. */
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
