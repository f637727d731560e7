/** The values saved in the browser, by their keys. `managed` holds the values that the school has set. */
export const kept = new Map<string, unknown>();

/** An in-memory stand-in for the part of the browser's storage that the code uses. Values are copied, as in the browser. */
export const browser = {
  storage: {
    local: {
      get: async (keys: string | readonly string[] | null) => {
        const asked = keys === null ? [...kept.keys()] : [keys].flat();
        return structuredClone(
          Object.fromEntries(asked.filter((key) => kept.has(key)).map((key) => [key, kept.get(key)])),
        );
      },
      set: async (items: Record<string, unknown>) => {
        for (const [key, value] of Object.entries(items)) kept.set(key, structuredClone(value));
      },
      remove: async (keys: readonly string[]) => {
        for (const key of keys) kept.delete(key);
      },
    },
    managed: {
      get: async () => {
        if (!kept.has('managed')) throw new Error('Managed storage manifest not found');
        return structuredClone(kept.get('managed'));
      },
    },
  },
};
