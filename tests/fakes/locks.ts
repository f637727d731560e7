import { vi } from 'vitest';

/** The part of the browser's Web Locks that is used, for the one window there is in unit tests. */
const last = new Map<string, Promise<unknown>>();
vi.stubGlobal('navigator', {
  locks: {
    async request(name: string, work: () => Promise<unknown>) {
      const done = (last.get(name) ?? Promise.resolve()).then(work);
      const settled = done.catch(() => undefined);
      last.set(name, settled);
      return done;
    },
  },
});
