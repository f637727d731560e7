import { readFileSync } from 'node:fs';

/** The data that a version of the extension left in a browser: its storage, and its databases in the form stored there. */
export interface StoredShapes {
  readonly local: Readonly<Record<string, unknown>>;
  readonly desk: { readonly version: number; readonly passages: readonly object[] };
  readonly shelf: {
    readonly version: number;
    /** `counts` is a list in this file and a `Uint32Array` in the database. */
    readonly texts: readonly { readonly id: string; readonly counts: readonly number[] }[];
    readonly kept: Readonly<Record<string, string>>;
  };
}

/**
 * Returns the stored shapes of a version in tests/stored. Such a file is never changed. A new version of the storage
 * gets its own file.
 */
export function loadStoredShapes(version: number): StoredShapes {
  return JSON.parse(
    readFileSync(new URL(`version-${version}.json`, import.meta.url), 'utf8'),
  ) as StoredShapes;
}

/** Returns a file as a version of the extension saved it. */
export function loadSavedFile(name: string): string {
  return readFileSync(new URL(name, import.meta.url), 'utf8');
}
