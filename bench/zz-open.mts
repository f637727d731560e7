import { measureCardOpening } from '/work/h-28/bench/card-opening.ts';

console.log(JSON.stringify(await measureCardOpening(12)));
process.exit(0);
