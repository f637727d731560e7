import { writeFileSync } from 'node:fs';
import { fitWeights } from './fit-weights.ts';
import { readExamples } from './read-examples.ts';

/** Learns how homographs are told apart: `npx tsx src/data/homographs/train.ts` writes weights.json of the engine. */
const examples = readExamples();
if (!examples) {
  console.error(
    'The homograph sentences are not here; the weights stay as they are. Put homographs_train.tsv into ../shared/data.',
  );
} else {
  const weights = `${JSON.stringify(fitWeights(examples), null, 2)}\n`;
  writeFileSync(new URL('../../analyze/homographs/weights.json', import.meta.url), weights);
  console.log(`${examples.length} places, ${Math.round(weights.length / 1000)} KB of weights`);
}
