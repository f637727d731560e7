import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readPdf } from '../../src/cli/read-pdf.ts';
import { loadEngine } from '../../src/host/data/load-engine.ts';
import { FileFault } from '../../src/passage/files/file-fault.ts';
import { openFile } from '../../src/passage/files/open-file.ts';
import { makeDocx, makeEpub, makePdf } from '../desk/make-files.ts';

test('any bytes in any kind of file give a text, chapters or a fault, never another error', async () => {
  const engine = await loadEngine();
  const whole = await Promise.all([makeDocx(), makePdf(), makeEpub([{ name: 'one', body: '<p>Nets.</p>' }])]);
  const broken = fc
    .tuple(
      fc.constantFrom(0, 1, 2),
      fc.array(fc.tuple(fc.nat(), fc.nat(255)), { minLength: 1, maxLength: 12 }),
    )
    .map(([n, changes]) => {
      const bytes = whole[n]!.slice();
      for (const [at, byte] of changes) bytes[at % bytes.length] = byte;
      return { kind: ['docx', 'pdf', 'epub'][n]!, bytes };
    });
  const random = fc.record({
    kind: fc.constantFrom('txt', 'md', 'html', 'docx', 'pdf', 'epub'),
    bytes: fc.uint8Array({ maxLength: 600, size: 'max' }),
  });
  const ends = { text: 0, fault: 0 };
  await fc.assert(
    fc.asyncProperty(fc.oneof(broken, random), async ({ kind, bytes }) => {
      try {
        // The reader of PDF files runs in a worker in the browser, and without a worker in the commands.
        if (kind === 'pdf') await readPdf(bytes, engine);
        else await openFile(new File([bytes as BlobPart], `any.${kind}`));
        ends.text++;
      } catch (error) {
        if (!(error instanceof FileFault)) throw error;
        ends.fault++;
      }
    }),
    { seed: 20261125, numRuns: 300 },
  );
  expect(Math.min(ends.text, ends.fault), 'both happen').toBeGreaterThan(25);
});
