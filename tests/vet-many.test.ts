import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { english } from '../src/wording/en.ts';
import { makeDocx, makeEpub, makePdf } from './desk/make-files.ts';

/** Tests many texts at once, as scripts and job queues send them. Other programs rely on the format of the output. */

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'wordreach-'));
// Each test starts a program that starts threads.
vi.setConfig({ testTimeout: 60_000 });
afterAll(() => rmSync(folder, { recursive: true }));

save('herons.json', {
  name: 'Herons',
  sequence: './steps.json',
  step: 1,
  bySight: ['the'],
  names: ['Bram'],
});
save('plovers.json', { name: 'Plovers, "big"', sequence: './steps.json', step: 2 });
save('steps.json', {
  id: 'quay-steps',
  name: 'Quay steps',
  source: 'this test',
  licence: 'MIT',
  steps: [
    {
      title: 'First',
      teaches: ['f', 'sh', 'short-i', 'g', 'short-o', 's', 'h', 'd', 'short-a'],
      bySight: ['is'],
    },
    { teaches: ['n', 'm'], bySight: ['the'] },
    { teaches: ['w', 'ai', 't'], bySight: [] },
  ],
});
mkdirSync(join(folder, 'quay/market'), { recursive: true });
save('quay/fog.txt', 'The fog is on the dish. Bram had 12 fish.\n');
save('quay/market/wait.html', '<title>=Wait, "Ines"</title><p>The man had <i>fi</i>sh. I wait.');
save('quay/market/empty.md', '');
save('quay/broken.docx', 'no document');
save('quay/notes.log', 'fish');

const group = ['--group', 'herons.json'];

describe('output as a table, as records and as rows', () => {
  test('csv has exactly one line for each text and group', async () => {
    const { out, err, code } = await vet([...group, '--group', 'plovers.json', '--out', 'csv', 'quay']);
    expect(out).toBe(
      `\ufeff${[
        'text,title,group,sequence,step,words,running,reach,reads,fresh,by sight,names,unsure,beyond,skipped,reaches 95 at step,reaches 99 at step,gaps and what they open,error',
        'quay/broken.docx,,,,,,,,,,,,,,,,,,"This file is named .docx but is something else, or damaged. Get it again."',
        'quay/fog.txt,fog,Herons,quay-steps,1,9,8,87.5,0,4,3,1,0,1,1,2,2,n as in net: 1,',
        'quay/fog.txt,fog,"Plovers, ""big""",quay-steps,2,9,8,100,4,1,3,1,0,0,1,2,2,,',
        'quay/market/empty.md,,,,,,,,,,,,,,,,,,There are no words in this text. Check that it is the one you meant.',
        `quay/market/wait.html,"'=Wait, ""Ines""",Herons,quay-steps,1,6,6,50,0,2,1,0,0,3,0,,,i as in spider: 1,`,
        `quay/market/wait.html,"'=Wait, ""Ines""","Plovers, ""big""",quay-steps,2,6,6,66.7,2,1,1,0,0,2,0,,,i as in spider: 1,`,
        '',
      ].join('\r\n')}`,
    );
    expect(err).toBe(
      'quay/broken.docx: This file is named .docx but is something else, or damaged. Get it again.\n' +
        'quay/market/empty.md: There are no words in this text. Check that it is the one you meant.\n',
    );
    expect(code).toBe(1);
  });

  test('json has the named file and then the files of the pattern, each file once', async () => {
    const { out, err, code } = await vet([
      ...group,
      '--out',
      'json',
      '--words',
      'quay/notes.log',
      'quay/**/*.{txt,log}',
    ]);
    expect({ err, code }).toEqual({ err: '', code: 0 });
    const report = { group: 'Herons', sequence: 'quay-steps', step: 1 };
    const none = { running: 0, reads: 0, fresh: 0, bySight: 0, names: 0, unsure: 0, beyond: 0, skipped: 0 };
    expect(JSON.parse(out)).toEqual([
      {
        text: 'quay/notes.log',
        title: 'notes',
        reports: [
          {
            ...report,
            tally: { ...none, running: 1, fresh: 1, reach: 100 },
            reaches95: 1,
            reaches99: 1,
            gaps: [],
            words: [{ word: 'fish', count: 1, standing: 'fresh', missing: [] }],
          },
        ],
      },
      {
        text: 'quay/fog.txt',
        title: 'fog',
        reports: [
          {
            ...report,
            tally: {
              ...none,
              running: 8,
              fresh: 4,
              bySight: 3,
              names: 1,
              beyond: 1,
              skipped: 1,
              reach: 87.5,
            },
            reaches95: 2,
            reaches99: 2,
            gaps: [{ pattern: 'n', label: 'n as in net', opens: 1, words: ['on'] }],
            words: [
              { word: 'on', count: 1, standing: 'beyond', missing: ['n'] },
              { word: 'dish', count: 1, standing: 'fresh', missing: [] },
              { word: 'fish', count: 1, standing: 'fresh', missing: [] },
              { word: 'fog', count: 1, standing: 'fresh', missing: [] },
              { word: 'had', count: 1, standing: 'fresh', missing: [] },
              { word: 'the', count: 2, standing: 'by-sight', missing: [] },
              { word: 'is', count: 1, standing: 'by-sight', missing: [] },
              { word: 'bram', count: 1, standing: 'name', missing: expect.any(Array) },
            ],
          },
        ],
      },
    ]);
  });

  test('html needs no other file, and shows the text of the files without running it', async () => {
    const { out, code } = await vet([
      ...group,
      '--group',
      'plovers.json',
      '--out',
      'html',
      'quay/market',
      'none.txt',
    ]);
    expect(code).toBe(1);
    expect(out).toMatch(/^<!doctype html>.*<\/html>\n$/s);
    expect(out).toContain('=Wait, &#34;Ines&#34;<small>quay/market/wait.html');
    expect(out).toContain('<b>Herons</b>: Quay steps, step 1, First');
    expect(out).toContain('there is no such file; check the path.');
    expect(out.match(/<tbody>/g)).toHaveLength(3);
    expect(out).not.toMatch(/<script|\ssrc=|\shref=|@import|url\(/);
  });

  test('several texts without --out get one line each', async () => {
    const { out, err, code } = await vet([...group, 'quay/fog.txt', 'quay/market/wait.html']);
    expect({ err, code }).toEqual({ err: '', code: 0 });
    const [head, first, second] = out.split('\n');
    expect(head?.split(/\s{2,}/)).toEqual(['Readable', '95 at', '99 at', 'Words', 'Group', 'Text']);
    expect(first?.split(/\s+/)).toEqual(['', '87.5%', '2', '2', '9', 'Herons', 'quay/fog.txt']);
    expect(second?.split(/\s+/)).toEqual(['', '50.0%', '–', '–', '6', 'Herons', 'quay/market/wait.html']);
    expect(out).not.toContain('\u001b');
  });

  test('a damaged file is reported with the same sentence as in the extension', async () => {
    writeFileSync(join(folder, 'cut-off.docx'), 'PK\x03\x04 and no more');
    const { err, code } = await vet([...group, '--out', 'json', 'cut-off.docx']);
    expect(err).toBe(`cut-off.docx: ${english.files.damaged}\n`);
    expect(code).toBe(1);
  });

  test('documents, PDFs and books are read', async () => {
    writeFileSync(join(folder, 'a.docx'), await makeDocx());
    writeFileSync(join(folder, 'b.pdf'), await makePdf());
    writeFileSync(join(folder, 'c.epub'), makeEpub([{ name: 'one', body: '<h1>One</h1><p>The fog.</p>' }]));
    const { out, code } = await vet([...group, '--out', 'json', '--words', 'a.docx', 'b.pdf', 'c.epub']);
    expect(code).toBe(0);
    const [docx, pdf, epub] = JSON.parse(out);
    const wordsOf = (record: { reports: { words: { word: string }[] }[] }) =>
      record.reports[0]!.words.map(({ word }) => word);
    expect(docx.title).toBe('The Marigold at Rest');
    expect(wordsOf(docx)).toEqual(expect.arrayContaining(['ferry', 'scrub']));
    // This word is in the footnote of the document.
    expect(wordsOf(docx)).not.toContain('says');
    expect(pdf.title).toBe('A Wild Night');
    expect(wordsOf(pdf)).toContain('night');
    expect(epub.title).toBe('The Bell on the Wall');
    expect(wordsOf(epub)).toEqual(expect.arrayContaining(['fog', 'one']));
  });

  test('each path without a file is reported, and the exit code is 1', async () => {
    const { err, code } = await vet([...group, '--out', 'csv', 'none.txt', 'quay/*.pdf', 'quay/fog.txt']);
    expect(err).toBe(
      'none.txt: there is no such file; check the path.\nquay/*.pdf: there is no such file; check the path.\n',
    );
    expect(code).toBe(1);
  });

  test('--help explains how to call the command and what the exit codes mean', async () => {
    const { out, code } = await vet(['--help']);
    expect(code).toBe(0);
    expect(out).toMatch(/--jsonl.*Exit code: 0 /s);
  });
});

describe('JSON lines', () => {
  test('are answered in order; a faulty line gets an error and does not stop the others', async () => {
    const lines = [
      '{"id":7,"text":"The fog."}',
      'no JSON',
      '',
      '{"id":{"page":2},"html":"<p>Fi<b>sh</b><script>man</script>"}',
      '{"id":"x","text":5}',
      'null',
      '{"text":"\\ud800 \\u0000 fog"}',
    ];
    const { out, err, code } = await vet([...group, '--jsonl'], lines.join('\n'));
    expect({ err, code }).toEqual({ err: '', code: 1 });
    const answers = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(answers.map(({ id }) => id)).toEqual([7, null, { page: 2 }, 'x', null, null]);
    expect(answers.map(({ error = null }) => error?.slice(0, 7) ?? null)).toEqual([
      null,
      'Line 2:',
      null,
      'Line 5:',
      'Line 6:',
      null,
    ]);
    expect(answers[0].reports[0].tally).toMatchObject({ running: 2, fresh: 1, bySight: 1 });
    expect(answers[2].reports[0].tally).toMatchObject({ running: 1, fresh: 1 });
    expect(answers[5].reports[0].tally).toMatchObject({ running: 1, fresh: 1 });
  });

  test('an answer comes before the next line is given', async () => {
    const child = start([...group, '--jsonl']);
    for (const id of [1, 2, 3]) {
      child.stdin.write(`{"id":${id},"text":"fog"}\n`);
      const [answer] = await once(child.stdout, 'data');
      expect(JSON.parse(String(answer)).id).toBe(id);
    }
    child.stdin.end();
    expect(await once(child, 'close')).toEqual([0, null]);
  });

  test('the command ends at Ctrl-C, and each printed line is whole', async () => {
    const child = start([...group, '--jsonl']);
    child.stdin.write('{"id":1,"text":"fog"}\n');
    const [answer] = await once(child.stdout, 'data');
    expect(String(answer)).toMatch(/^\{"id":1,.*\}\n$/);
    const said = once(child.stderr, 'data');
    child.kill('SIGINT');
    expect(String(await said)).toBe('Stopped after 1 lines.\n');
    expect(await once(child, 'close')).toEqual([130, null]);
  });

  test('the memory use does not grow with the number of lines', async () => {
    const [few, many] = [await mostMemory(2_000), await mostMemory(10_000)];
    // The limit is less than the size of the additional lines, if they were kept: 8,000 lines of 8 kB.
    expect(many - few).toBeLessThan(40);
  });

  test('the number of threads does not change the output', async () => {
    const texts = fc.sample(
      fc.array(
        fc.constantFrom('fog', 'Fish', 'wait', 'Ines', 'the', 'read', '12', '.', '“', '\n\n', 'é', 'zzyx'),
        {
          maxLength: 40,
          size: 'max',
        },
      ),
      { seed: 20_261_125, numRuns: 300 },
    );
    const input = texts.map((words, id) => JSON.stringify({ id, text: words.join(' ') })).join('\n');
    const [one, three] = await Promise.all(
      ['1', '3'].map((jobs) => vet([...group, '--jsonl', '--words', '--jobs', jobs], input)),
    );
    expect(one!.out.split('\n')).toHaveLength(301);
    expect(three).toEqual(one);
  });
});

function save(name: string, content: unknown): void {
  writeFileSync(join(folder, name), typeof content === 'string' ? content : JSON.stringify(content));
}

/** Returns the highest memory use of a run over the given number of lines, in megabytes. */
async function mostMemory(lines: number): Promise<number> {
  const tell = `process.on('exit', () => process.stderr.write(String(process.resourceUsage().maxRSS / 1024)))`;
  const child = start([...group, '--jsonl', '--jobs', '2'], ['--import', `data:text/javascript,${tell}`]);
  const line = (id: number) =>
    JSON.stringify({ id, text: `The fish had ${id} fins.`, kept: 'x'.repeat(8000) });
  const input = Readable.from(
    (function* () {
      for (let id = 0; id < lines; id++) yield `${line(id)}\n`;
    })(),
  );
  let [answers, memory] = [0, ''];
  child.stdout.setEncoding('utf8').on('data', (piece: string) => {
    answers += piece.split('\n').length - 1;
  });
  child.stderr.on('data', (piece) => {
    memory += piece;
  });
  await Promise.all([pipeline(input, child.stdin), once(child, 'close')]);
  expect(answers).toBe(lines);
  return Number(memory);
}

function start(args: readonly string[], nodeArgs: readonly string[] = []) {
  const { INIT_CWD: _, ...env } = process.env;
  return spawn(process.execPath, [...nodeArgs, join(root, '.output/cli/vet.mjs'), ...args], {
    cwd: folder,
    env,
  });
}

async function vet(
  args: readonly string[],
  input = '',
): Promise<{ out: string; err: string; code: number | null }> {
  const child = start(args);
  const pieces = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (piece: string) => {
    pieces.out += piece;
  });
  child.stderr.setEncoding('utf8').on('data', (piece: string) => {
    pieces.err += piece;
  });
  child.stdin.end(input);
  const [code] = await once(child, 'close');
  return { ...pieces, code };
}
