import { spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { getSystemErrorMap } from 'node:util';
import { strToU8, zipSync, zlibSync } from 'fflate';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { explainReading, explainWriting } from '../src/cli/explain-errno.ts';
import { VET_USAGE } from '../src/cli/read-vet-options.ts';
import { runCommand } from '../src/cli/run-command.ts';
import { vetCommand } from '../src/cli/vet-command.ts';

/**
 * Tests the commands when the operating system gives an error. The message is one sentence with the next step, never a
 * stack trace, and the exit code is right.
 */

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'wordreach-'));
const at = (name: string): string => join(folder, name);
vi.setConfig({ testTimeout: 60_000 });
afterAll(() => rmSync(folder, { recursive: true }));

const group = { name: 'Herons', sequence: null, alsoTaught: ['f', 'sh', 'short-i'], bySight: ['the'] };
save('herons.json', JSON.stringify(group));
save('fish.txt', 'the fish');
mkdirSync(at('bare'));
mkdirSync(at('shut'));
chmodSync(folder, 0o755);
symlinkSync('loop.txt', at('loop.txt'));
save('locked.txt', 'the fish');
chmodSync(at('locked.txt'), 0o000);
chmodSync(at('shut'), 0o000);
afterAll(() => chmodSync(at('shut'), 0o755));

/**
 * Permissions do not bind an administrator, and tests in a container often run as administrator. The commands therefore
 * run as another user.
 */
const NOBODY = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};

const READING = [
  ['ENOENT', 'none.txt', 'there is no such file'],
  ['ELOOP', 'loop.txt', 'is a link that leads back to itself'],
  ['ENAMETOOLONG', `${'n'.repeat(300)}.txt`, 'longer than the system allows'],
  ['ENOTDIR', 'fish.txt/more.txt', 'a part of the path is a file and no folder'],
  ['EACCES', 'locked.txt', 'may not be read; check its permissions'],
  ['EACCES of a folder', 'shut', 'may not be read; check its permissions'],
  ['an empty folder', 'bare', 'there is no text in this folder'],
] as const;

describe.each(READING)('%s', (_code, path, says) => {
  test.each([
    ['vet, the report of one text', ['--group', 'herons.json', path], 1],
    ['vet --json', ['--group', 'herons.json', '--json', path], 1],
  ])('%s', async (_name, args, code) => {
    const done = await vetHere(args);
    expectSentence(done, `${path}: `, says);
    expect(done.code).toBe(code);
  });
});

test.each([
  ['vet --out csv', ['--out', 'csv']],
  ['vet, a line each', []],
])('%s reports each unreadable text in a sentence, and reads the other texts', async (_name, out) => {
  const { err, ...done } = await vet([
    ...['--group', 'herons.json', ...out],
    ...READING.map(([, path]) => path),
    'fish.txt',
  ]);
  const sentences = err.trimEnd().split('\n');
  expect(sentences).toHaveLength(READING.length);
  for (const [i, [, path, says]] of READING.entries())
    expectSentence({ ...done, err: sentences[i]! }, `${path}: `, says);
  expect(done.code).toBe(1);
  expect(done.out).toContain('fish.txt');
});

describe.each(READING.filter(([, path]) => path !== 'bare' && path !== 'shut'))(
  'when reading a group file fails with %s',
  (_code, path, says) => {
    test('vet', async () => {
      const done = await vetHere(['--group', path, 'fish.txt']);
      expectSentence(done, `${path}: `, says);
      expect({ out: done.out, code: done.code }).toEqual({ out: '', code: 2 });
    });
  },
);

test.each([
  ['vet of a folder on stdin', 'vet', ['--group', 'herons.json', '-'], 1],
  ['vet --jsonl of a folder on stdin', 'vet', ['--group', 'herons.json', '--jsonl'], 2],
  ['word of a folder on stdin', 'word', ['-'], 2],
  ['swap of a folder on stdin', 'swap', ['--json', '--all'], 2],
])('%s', async (_name, command, args, code) => {
  const stdin = openSync(at('bare'), 'r');
  const done = await run(command, args, { stdin });
  closeSync(stdin);
  expectSentence(done, '', 'is a folder; give a file');
  expect(done.code).toBe(code);
});

describe('when the output cannot be written', () => {
  const many = Array.from({ length: 40 }, () => 'fish.txt');
  test.each([
    ['vet', 'vet', ['--group', 'herons.json', 'fish.txt']],
    ['vet --json', 'vet', ['--group', 'herons.json', '--json', 'fish.txt']],
    ['vet --out csv', 'vet', ['--group', 'herons.json', '--out', 'csv', 'fish.txt']],
    ['vet --out json', 'vet', ['--group', 'herons.json', '--out', 'json', 'fish.txt']],
    ['vet --out html', 'vet', ['--group', 'herons.json', '--out', 'html', 'fish.txt']],
    ['vet --jsonl', 'vet', ['--group', 'herons.json', '--jsonl']],
    ['vet --help', 'vet', ['--help']],
    ['word', 'word', ['boat']],
    ['swap', 'swap', ['--json', '--all']],
    ['patterns', 'patterns', ['--json']],
  ])('%s reports a full disk in one sentence, with exit code 3', async (_name, command, args) => {
    const stdout = openSync('/dev/full', 'w');
    const line = '{"id":1,"text":"fish","sentence":"The fish swam.","start":4,"end":8}\n';
    const done = await run(command, args, { stdout, input: line });
    closeSync(stdout);
    expectSentence(done, 'The output cannot be written: ', 'the disk is full; make room');
    expect(done.code).toBe(3);
  });

  // A limit on the file size stops a write midway, like a full disk.
  test.each([
    ['csv', 2, (out: string) => out.endsWith('\r\n')],
    ['json', 5, (out: string) => Array.isArray(JSON.parse(out))],
    ['html', 5, (out: string) => out.endsWith('</html>\n')],
  ])('a file of %s that could not be finished consists of whole records', async (out, kilobytes, isWhole) => {
    for (const [i] of many.entries()) save(`many-${i}.txt`, `the fish ${'fish '.repeat(i)}`);
    const texts = many.map((_, i) => `many-${i}.txt`).join(' ');
    const vetFile = join(root, '.output/cli/vet.mjs');
    const done = await run('bash', [
      '-c',
      `ulimit -f ${kilobytes}; "${process.execPath}" "${vetFile}" --group herons.json --jobs 1 --out ${out} ${texts} > cut.${out}`,
    ]);
    expectSentence(done, 'The output cannot be written: ', 'the file would be larger than is allowed');
    expect(done.code).toBe(3);
    const written = readFileSync(at(`cut.${out}`), 'utf8');
    expect(written).toContain('many-1.txt');
    expect(written).not.toContain('many-39.txt');
    expect(isWhole(written)).toBe(true);
  });

  test('a file that is appended to keeps its earlier content', async () => {
    save('log.csv', `${'before\n'.repeat(700)}`);
    const vetFile = join(root, '.output/cli/vet.mjs');
    await run('bash', [
      '-c',
      `ulimit -f 5; "${process.execPath}" "${vetFile}" --group herons.json --out csv fish.txt many-*.txt >> log.csv`,
    ]);
    expect(readFileSync(at('log.csv'), 'utf8')).toMatch(/^(before\n){700}(\ufeff.*\r\n(fish|many).*\r\n)?/);
  });
});

describe('without words', () => {
  const none = 'There are no words in this text. Check that it is the one you meant.';
  const empty = [
    ['an empty file', ''],
    ['blanks', ' \n\n'],
    ['numbers alone', '12 15 1,000'],
    ['a byte order mark alone', '\ufeff'],
  ] as const;

  test.each(empty)(
    'the report of %s is an error without a share, with exit code 1',
    async (_name, content) => {
      save('none.txt.txt', content);
      const one = await vetHere(['--group', 'herons.json', 'none.txt.txt']);
      expect(one).toEqual({ out: '', err: `none.txt.txt: ${none}\n`, code: 1 });
    },
  );

  test('files and lines get an error instead of a share, with exit code 1', async () => {
    const names = empty.map(([, content], i) => {
      save(`none-${i}.txt`, content);
      return `none-${i}.txt`;
    });
    const csv = await vet(['--group', 'herons.json', '--out', 'csv', ...names]);
    expect(csv.out.trimEnd().split('\r\n').slice(1)).toEqual(
      names.map((name) => `${name}${','.repeat(18)}${none}`),
    );
    expect(csv.code).toBe(1);
    const input = empty.map(([, text], id) => `${JSON.stringify({ id, text })}\n`).join('');
    const lines = await vet(['--group', 'herons.json', '--jsonl'], { input });
    expect(
      lines.out
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line)),
    ).toEqual(empty.map((_, id) => ({ id, error: `Line ${id + 1}: ${none}` })));
    expect(lines.code).toBe(1);
  });

  test('a text of names alone has no share, but is no error', async () => {
    save('names.json', JSON.stringify({ ...group, names: ['Bram'] }));
    save('bram.txt', 'Bram');
    const csv = await vet(['--group', 'names.json', '--out', 'csv', 'bram.txt']);
    expect(csv.out.split('\r\n')[1]).toBe('bram.txt,bram,Herons,,0,1,0,,0,0,0,1,0,0,0,,,,');
    expect(csv.code).toBe(0);
    const json = await vetHere(['--group', 'names.json', '--json', 'bram.txt']);
    expect(JSON.parse(json.out).tally.reach).toBe(null);
    expect((await vetHere(['--group', 'names.json', 'bram.txt'])).out).toContain(
      'No words but names: 1 names',
    );
  });
});

/** Encodings of a text, each with its byte order mark. */
const WRITTEN: readonly (readonly [string, (text: string) => Buffer])[] = [
  ['UTF-8 with a mark', (text) => Buffer.from(`\ufeff${text}`)],
  ['UTF-16, the low byte first', (text) => Buffer.from(`\ufeff${text}`, 'utf16le')],
  ['UTF-16, the high byte first', (text) => Buffer.from(`\ufeff${text}`, 'utf16le').swap16()],
];

test('texts, pages and groups in files give the same result in every encoding', async () => {
  const names = WRITTEN.flatMap(([, write], i) => {
    save(`marked-${i}.txt`, write('the fish'));
    save(`marked-${i}.html`, write('<!doctype html><p>the fish'));
    save(`marked-${i}.json`, write(JSON.stringify(group)));
    return [`marked-${i}.txt`, `marked-${i}.html`];
  });
  const groups = WRITTEN.flatMap((_, i) => ['--group', `marked-${i}.json`]);
  const texts = await vet([...groups, '--out', 'csv', ...names]);
  expect(texts.err).toBe('');
  const rows = texts.out.trimEnd().split('\r\n').slice(1);
  expect(rows).toHaveLength(names.length * WRITTEN.length);
  for (const row of rows) expect(row).toContain(',Herons,,0,2,2,100,');
});

describe.each(WRITTEN)('%s on stdin', (_name, write) => {
  test('a text, a page, words and lines give the same result', async () => {
    for (const page of ['the fish', '<!doctype html><p>the fish']) {
      const { out } = await vet(['--group', 'herons.json', '--json', '-'], { input: write(page) });
      expect(JSON.parse(out).tally).toMatchObject({ running: 2, reach: 100 });
    }
    const lines = '{"id":1,"text":"the fish"}\n{"id":2,"text":"fish"}\n';
    const answers = await vet(['--group', 'herons.json', '--jsonl'], { input: write(lines) });
    expect(
      answers.out
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line).reports[0].tally.reach),
    ).toEqual([100, 100]);
    const { out } = await run('word', ['--json', '-'], { input: write('boat rain') });
    expect(JSON.parse(out).map(({ word }: { word: string }) => word)).toEqual(['boat', 'rain']);
  });
});

describe('folders', () => {
  test('a folder that is linked into itself gives each text once', async () => {
    mkdirSync(at('ring/inner'), { recursive: true });
    save('ring/fish.txt', 'the fish');
    save('ring/inner/ship.txt', 'the ship');
    symlinkSync('..', at('ring/inner/again'));
    symlinkSync('inner', at('ring/a-link'));
    symlinkSync('fish.txt', at('ring/a-fish.txt'));
    const { out, code } = await vet(['--group', 'herons.json', '--out', 'json', 'ring', 'ring/**/*.txt']);
    expect(JSON.parse(out).map(({ text }: { text: string }) => text)).toEqual([
      'ring/fish.txt',
      'ring/inner/ship.txt',
    ]);
    expect(code).toBe(0);
  });

  test('an unreadable folder is reported, and the other folders are read', async () => {
    mkdirSync(at('quay/closed'), { recursive: true });
    save('quay/fish.txt', 'the fish');
    chmodSync(at('quay/closed'), 0o000);
    const { out, err, code } = await vet(['--group', 'herons.json', '--out', 'csv', 'quay']);
    chmodSync(at('quay/closed'), 0o755);
    expect(err).toBe('quay/closed: may not be read; check its permissions.\n');
    expect(out).toContain('quay/fish.txt,fish,Herons');
    expect(code).toBe(1);
  });
});

describe('files made to overload the machine', () => {
  const tide = 'The fish is in. ';
  const chapter = (says: string) => strToU8(`<html><body><p>${says}</p></body></html>`);
  const book = (spine: string, says: string) =>
    zipSync({
      mimetype: strToU8('application/epub+zip'),
      'META-INF/container.xml': strToU8(
        '<container><rootfiles><rootfile full-path="book.opf"/></rootfiles></container>',
      ),
      'book.opf': strToU8(
        `<package><manifest><item id="a" href="a.xhtml"/></manifest><spine>${spine}</spine></package>`,
      ),
      'a.xhtml': chapter(says),
    });
  const blanks = zlibSync(zlibSync(new Uint8Array(70_000_000).fill(32)));
  const files: readonly (readonly [string, string | Buffer, string])[] = [
    ['deep.html', `<p>${tide}</p>${'<div>'.repeat(200_000)}`, 'more than 1,000 levels deep'],
    [
      'blanks.pdf',
      Buffer.concat([
        Buffer.from(`%PDF-1.7\n1 0 obj\n<< /Filter 2 0 R /Length ${blanks.length} >>\nstream\n`),
        blanks,
        Buffer.from('\nendstream\nendobj\n2 0 obj\n[/FlateDecode /FlateDecode]\nendobj\n'),
      ]),
      'too large once it is unpacked',
    ],
    [
      'long.epub',
      Buffer.from(book('<itemref idref="a"/>'.repeat(20_000), tide)),
      'lists more parts than any book',
    ],
    [
      'deep.epub',
      Buffer.from(book('<itemref idref="a"/>', '<div>'.repeat(200_000))),
      'more than 1,000 levels deep',
    ],
    [
      'blank.docx',
      Buffer.from(zipSync({ 'word/document.xml': new Uint8Array(70_000_000) })),
      'too large once it is unpacked',
    ],
  ];
  for (const [name, content] of files) save(name, content);

  test('each is refused in a sentence with exit code 1, and other texts are still vetted', async () => {
    const names = files.map(([name]) => name);
    const done = await vet(['--group', 'herons.json', '--out', 'csv', ...names, 'fish.txt']);
    const sentences = done.err.trimEnd().split('\n');
    expect(sentences).toHaveLength(files.length);
    for (const [i, [name, , says]] of files.entries())
      expectSentence({ ...done, err: sentences[i]! }, `${name}: `, says);
    expect(done.out).toContain('\r\nfish.txt,fish,Herons,,0,2,2,100,');
    expect(done.code).toBe(1);
  });

  test('a book that lists a chapter many times is read with that chapter once', async () => {
    save('often.epub', Buffer.from(book('<itemref idref="a"/>'.repeat(4000), tide)));
    const { out } = await vet(['--group', 'herons.json', '--json', 'often.epub']);
    expect(JSON.parse(out).tally.running).toBe(4);
  });

  test('a page with more elements than a function call can have arguments is read', async () => {
    save('wide.html', `<!doctype html>${'<br>'.repeat(150_000)}${tide}`);
    const { out } = await vet(['--group', 'herons.json', '--json', 'wide.html']);
    expect(JSON.parse(out).tally.running).toBe(4);
  });
});

test('every system error is explained in a sentence', () => {
  for (const [code] of getSystemErrorMap().values()) {
    const error = Object.assign(new Error(code), { code });
    for (const says of [explainReading(error), explainWriting(error)]) {
      expect(says).toMatch(/^[A-Za-z].*[;:] [a-z].*\.$/);
      expect(says).not.toMatch(/undefined|\bat \//);
    }
  }
});

interface Done {
  readonly out: string;
  readonly err: string;
  readonly code: number | null;
}

function expectSentence({ err }: Done, start: string, says: string): void {
  const lines = err.trimEnd().split('\n');
  expect(lines).toHaveLength(1);
  expect(lines[0]!.startsWith(start)).toBe(true);
  expect(lines[0]).toContain(says);
}

function save(name: string, content: string | Buffer): void {
  writeFileSync(at(name), content);
}

/** Runs `vet` on one thread, because each thread reads the tables for itself. */
function vet(args: readonly string[], given: Given = {}): Promise<Done> {
  return run('vet', ['--jobs', '1', ...args], given);
}

/** Runs `vet` in the process of the tests: as the user nobody, in the test folder, with its output captured. */
async function vetHere(args: readonly string[]): Promise<Done> {
  const before = { folder: process.cwd(), user: process.geteuid!(), group: process.getegid!() };
  const printed = { out: '', err: '' };
  const catchIn = (stream: NodeJS.WriteStream, name: keyof typeof printed) =>
    vi.spyOn(stream, 'write').mockImplementation((piece, ...rest: unknown[]) => {
      printed[name] += String(piece);
      const done = rest.at(-1);
      if (typeof done === 'function') done();
      return true;
    });
  const caught = [catchIn(process.stdout, 'out'), catchIn(process.stderr, 'err')];
  vi.stubEnv('INIT_CWD', undefined);
  process.chdir(folder);
  if (NOBODY.gid !== undefined) process.setegid!(NOBODY.gid);
  if (NOBODY.uid !== undefined) process.seteuid!(NOBODY.uid);
  try {
    await runCommand(VET_USAGE, () => vetCommand(args));
    return { ...printed, code: Number(process.exitCode ?? 0) };
  } finally {
    process.exitCode = undefined;
    process.seteuid!(before.user);
    process.setegid!(before.group);
    process.chdir(before.folder);
    vi.unstubAllEnvs();
    for (const spy of caught) spy.mockRestore();
    for (const stream of [process.stdout, process.stderr])
      stream.off('error', stream.listeners('error').at(-1) as () => void);
  }
}

/** The input of a command, and the files that are its stdin and stdout where the tests do not capture these. */
interface Given {
  readonly input?: string | Buffer;
  readonly stdin?: number;
  readonly stdout?: number;
}

async function run(command: string, args: readonly string[], given: Given = {}): Promise<Done> {
  const { INIT_CWD: _, ...env } = process.env;
  const isOurs = command !== 'bash';
  const start = [join(root, `.output/cli/${command}.mjs`)];
  const child = spawn(isOurs ? process.execPath : command, [...(isOurs ? start : []), ...args], {
    cwd: folder,
    env,
    stdio: [given.stdin ?? 'pipe', given.stdout ?? 'pipe', 'pipe'],
    ...(command === 'vet' ? NOBODY : {}),
  });
  let [out, err] = ['', ''];
  child.stdout?.setEncoding('utf8').on('data', (piece: string) => {
    out += piece;
  });
  child.stderr!.setEncoding('utf8').on('data', (piece: string) => {
    err += piece;
  });
  // A command that refuses its arguments stops reading.
  child.stdin?.on('error', () => undefined);
  child.stdin?.end(given.input ?? '');
  const [code] = await once(child, 'close');
  return { out, err, code };
}
