import { vi } from 'vitest';

/** A stand-in for the part of the browser's Web Locks that the code uses. Unit tests have only one window. */
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
