import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { settleZip } from './settle-zip.ts';

test('the same content in another order and with another date gives the same bytes', () => {
  const folder = mkdtempSync(join(tmpdir(), 'settle-'));
  const a = strToU8('The ferry is late.');
  const b = strToU8('A big net.');
  const pack = (name: string, content: Record<string, Uint8Array>, day: string): Buffer => {
    const path = join(folder, name);
    writeFileSync(path, zipSync(content, { mtime: day }));
    settleZip(path);
    return readFileSync(path);
  };
  const one = pack('one.zip', { 'a.txt': a, 'b/c.txt': b }, '2026-11-25');
  const other = pack('other.zip', { 'b/c.txt': b, 'a.txt': a }, '2025-02-03');
  expect(other.equals(one)).toBe(true);
  expect(unzipSync(one)).toEqual({ 'a.txt': a, 'b/c.txt': b });
  expect(pack('changed.zip', { 'a.txt': b, 'b/c.txt': b }, '2026-11-25').equals(one)).toBe(false);
  rmSync(folder, { recursive: true });
});
