import { allLaws, britishLaws } from './all-laws.ts';
import { checkLaw } from './law.ts';
import { accent } from './lesson-words.ts';

/** Prints each law, the number of cases it checked, and every breach that no reviewed file explains. */
console.log(`Laws in ${accent === 'british' ? 'British' : 'American'}`);
const folder = accent === 'british' ? 'exceptions/british' : 'exceptions';
for (const law of accent === 'british' ? britishLaws : allLaws) {
  const { says, looked, breaches, unexplained, outdated, id } = checkLaw(law(), accent);
  console.log(
    `${says}: ${looked} looked at, ${breaches.length} exceptions, ${unexplained.length} without a reason`,
  );
  for (const { key, found } of unexplained) console.log(`  ${key}\t${found}`);
  for (const key of outdated)
    console.log(`  ${key}\tis no exception any more: take it out of ${folder}/${id}.tsv`);
}
