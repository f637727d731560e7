import { strToU8, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { FileFault } from './file-fault.ts';
import { unpackZip } from './unpack-zip.ts';

const zip = zipSync({ 'a.txt': strToU8('The ferry is late. '.repeat(500)), 'b.png': new Uint8Array(9) });
const stored = zipSync({ 'a.txt': strToU8('The ferry is late. '.repeat(500)) }, { level: 0 });
const isText = (name: string): boolean => name.endsWith('.txt');

test('the wanted parts are unpacked, and the names of all parts are returned', async () => {
  const { parts, names } = await unpackZip(zip, isText);
  expect(names).toEqual(['a.txt', 'b.png']);
  expect([...parts.keys()]).toEqual(['a.txt']);
  expect(new TextDecoder().decode(parts.get('a.txt'))).toHaveLength(9500);
});

test.each([
  ['cut off within a part', zip.subarray(0, 60)],
  ['cut off within a part that was not packed', stored.subarray(0, 900)],
  ['nothing', new Uint8Array()],
  ['something else', strToU8('The ferry is late.')],
])('input that is %s is refused', async (_, bytes) => {
  await expect(unpackZip(bytes, isText)).rejects.toThrow(FileFault);
});

test('a zip file that would fill the memory is refused', async () => {
  const bomb = zipSync({ 'a.txt': new Uint8Array(65_000_000) });
  expect(bomb.length).toBeLessThan(100_000);
  const taken = unpackZip(bomb, isText).then(({ names }) => names);
  await expect(taken).rejects.toThrow(FileFault);
});
