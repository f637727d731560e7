import { readFileSync, writeFileSync } from 'node:fs';
import { unzipSync, type Zippable, zipSync } from 'fflate';

/** As a clock on the wall shows it, since that is what a zip holds: the same bytes in every part of the world. */
const STAMP = new Date(2026, 0, 1);

/** Packs a zip file anew in the order of its names and without the hour of its making, so that the same content gives the same bytes. */
export function settleZip(path: string): void {
  const parts = Object.entries(unzipSync(readFileSync(path)));
  const sorted: Zippable = Object.fromEntries(parts.sort(([a], [b]) => (a < b ? -1 : 1)));
  writeFileSync(path, zipSync(sorted, { level: 9, mtime: STAMP }));
}
