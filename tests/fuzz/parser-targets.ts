import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { compileGroup, GroupError, parseGroup, parseSequence } from '../../src/analyze/index.ts';
import { EverythingFileError, readEverything } from '../../src/host/files/everything-file.ts';
import { PassageFileError, readPassages } from '../../src/host/files/passage-file.ts';
import { readShareFile, ShareError } from '../../src/host/files/share-file.ts';
import { readShelfFile, ShelfFileError } from '../../src/host/files/shelf-file.ts';
import {
  type FileItem,
  isFileError,
  readWordreachFile,
  WordreachFileError,
} from '../../src/host/files/wordreach-file.ts';
import { parsePlan, planOf, renew } from '../../src/lesson/index.ts';
import { loadSavedFile, loadStoredShapes } from '../stored/stored-shapes.ts';
import { expectFault, type FuzzTarget, hold, target } from './fuzz-target.ts';
import { mutateJson, mutateText } from './nasty-inputs.ts';

const { local } = loadStoredShapes(1);
const { groups } = local.groups as { groups: Record<string, unknown> };
const sequence: unknown = JSON.parse(
  readFileSync(new URL('../../profiles/sequences/second-tide.json', import.meta.url), 'utf8'),
);

/**
 * The fuzz targets that read files and storage. A target may throw only a fault whose message is a sentence. Reading
 * the result of a target again must give the same result.
 */
export const parserTargets: readonly FuzzTarget[] = [
  target({
    name: 'groups',
    input: mutateJson(groups.herons),
    share: 4,
    check: (input) => {
      try {
        const group = parseGroup(input);
        expectSame(parseGroup(JSON.parse(JSON.stringify(group))), group);
        compileGroup({ ...group, step: 0 }, null);
      } catch (error) {
        expectFault(error, GroupError);
      }
    },
  }),
  target({
    name: 'sequences',
    input: mutateJson(sequence),
    share: 2,
    check: (input) => {
      try {
        const read = parseSequence(input);
        expectSame(parseSequence(JSON.parse(JSON.stringify(read))), read);
      } catch (error) {
        expectFault(error, GroupError);
      }
    },
  }),
  target({
    name: 'lesson plans',
    input: mutateJson(local['lesson/group-1/']),
    share: 4,
    check: (input) => {
      const plan = parsePlan(input);
      if (!plan) return;
      expectSame(parsePlan(JSON.parse(JSON.stringify(plan))), plan);
      for (const id of Object.keys(renew(plan, 7).parts)) planOf(plan, { id });
    },
  }),
  fileTarget('shared files', loadSavedFile('share-1.json'), 1, readShareFile, ShareError),
  fileTarget('files of passages', loadSavedFile('passages-1.json'), 2, readPassages, PassageFileError),
  linesTarget('files of a shelf', loadSavedFile('shelf-1.jsonl'), readShelfFile, ShelfFileError),
  linesTarget(
    'files of everything',
    loadSavedFile('everything-1.jsonl'),
    readEverything,
    EverythingFileError,
  ),
  linesTarget('files of one kind', loadSavedFile('file-1.jsonl'), readAnyFile, WordreachFileError),
];

/** Reads any Wordreach file. Throws every kind of file error as a `WordreachFileError`. */
async function* readAnyFile(file: Blob): AsyncGenerator<FileItem> {
  try {
    yield* readWordreachFile(file);
  } catch (error) {
    throw isFileError(error) ? new WordreachFileError(error.message) : error;
  }
}

type Fault = new (...args: never[]) => Error;

function fileTarget(
  name: string,
  file: string,
  share: number,
  read: (text: string) => unknown,
  fault: Fault,
): FuzzTarget {
  const values = mutateJson(JSON.parse(file)).map((value) => JSON.stringify(value) ?? '');
  return target({
    name,
    share,
    input: fc.oneof(values, mutateText(fc.constant(file))),
    check: (text) => {
      try {
        read(text);
      } catch (error) {
        expectFault(error, fault);
      }
    },
  });
}

function linesTarget(
  name: string,
  file: string,
  read: (file: Blob) => AsyncIterable<unknown>,
  fault: Fault,
): FuzzTarget {
  const lines = file.trimEnd().split('\n');
  const values = fc
    .tuple(
      ...lines.map((line) =>
        fc.oneof(
          { weight: 4, arbitrary: fc.constant(line) },
          mutateJson(JSON.parse(line)).map((value) => JSON.stringify(value) ?? ''),
        ),
      ),
    )
    .map((some) => `${some.join('\n')}\n`);
  return target({
    name,
    share: 1,
    input: fc.oneof(values, mutateText(fc.constant(file))),
    check: async (text) => {
      try {
        for await (const item of read(new Blob([text]))) hold(typeof item === 'object', 'each item is one');
      } catch (error) {
        expectFault(error, fault);
      }
    },
  });
}

function expectSame(one: unknown, other: unknown): void {
  hold(JSON.stringify(one) === JSON.stringify(other), 'what was read is read again as it is');
}
