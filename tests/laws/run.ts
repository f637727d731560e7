import { allLaws } from './all-laws.ts';
import { checkLaw } from './law.ts';

/** Prints each law, how much it looked at, and every breach that no reviewed file explains. */
for (const law of allLaws) {
  const { says, looked, breaches, unexplained, outdated, id } = checkLaw(law());
  console.log(
    `${says}: ${looked} looked at, ${breaches.length} exceptions, ${unexplained.length} without a reason`,
  );
  for (const { key, found } of unexplained) console.log(`  ${key}\t${found}`);
  for (const key of outdated)
    console.log(`  ${key}\tis no exception any more: take it out of exceptions/${id}.tsv`);
}
