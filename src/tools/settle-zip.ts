import { readFileSync, writeFileSync } from 'node:fs';
import { unzipSync, type Zippable, zipSync } from 'fflate';

/** The timestamp in local time, since a zip contains local time. The bytes are the same in every time zone. */
const STAMP = new Date(2026, 0, 1);

/** Repacks a zip file in the order of its names and with a fixed time, so that the same content gives the same bytes. */
export function settleZip(path: string): void {
  const parts = Object.entries(unzipSync(readFileSync(path)));
  const sorted: Zippable = Object.fromEntries(parts.sort(([a], [b]) => (a < b ? -1 : 1)));
  writeFileSync(path, zipSync(sorted, { level: 9, mtime: STAMP }));
}
