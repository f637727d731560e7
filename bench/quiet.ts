import { cpus } from 'node:os';

/** The largest share of the machine's time that other programs may take. With a larger share, times mean nothing. */
export const QUIET = 0.1;
/** How long to observe the machine while nothing is measured, in milliseconds. */
const LOOK = 1000;

/**
 * Returns the share of the machine's time that other programs take now, from 0 to 1. Call this function while nothing
 * is measured.
 */
export async function lookAtOthers(): Promise<number> {
  const before = timesOfAll();
  await new Promise((resolve) => setTimeout(resolve, LOOK));
  const after = timesOfAll();
  const all = after.all - before.all;
  return all === 0 ? 0 : 1 - (after.idle - before.idle) / all;
}

function timesOfAll(): { all: number; idle: number } {
  let all = 0;
  let idle = 0;
  for (const { times } of cpus()) {
    idle += times.idle;
    for (const time of Object.values(times)) all += time;
  }
  return { all, idle };
}
