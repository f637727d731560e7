/**
 * A feature of a homograph's place: its kind and its values. Written, it is `ab=article is` for `['ab=', 'article',
 * 'is']` and `~storm` for `['~', 'storm']`. A kind without a value has an empty one.
 */
export type Feature = readonly [kind: string, ...values: string[]];

/** The kind of the features that describe the topic of a sentence, not its structure. */
export const TOPIC = '~';

/** Features with their weights in the format of `writeWeights`: `-1=the -4|ab=article is 12`. */
export type FeatureWeights = string;

/** The weights of a list by the number of the feature. */
export type NumberedWeights = ReadonlyMap<number, number>;

/** Numbers for the features that have a weight in any of the lists that were read. */
export interface FeatureNumbers {
  /** Reads a list of weights. */
  read(written: FeatureWeights): NumberedWeights;
  /** Returns the number of a feature, or undefined if no list has it. */
  find(feature: Feature): number | undefined;
}

const PARTED = '|';
const KIND = /^(?:[^=~]*=|[+-]1-|~|capital first|capital)/;

/** Writes features in their stored format. No feature contains a bar, because no piece of a context is a bar. */
export function writeWeights(
  weights: readonly (readonly [feature: string, weight: number])[],
): FeatureWeights {
  return weights.map(([feature, weight]) => `${feature} ${weight}`).join(PARTED);
}

/** Writes a feature as it is written in the weights. */
export function writeFeature([kind, ...values]: Feature): string {
  return kind + values.join(' ');
}

function readFeature(written: string): Feature {
  const kind = KIND.exec(written)?.[0] ?? '';
  return [kind, ...written.slice(kind.length).split(' ')];
}

/** The features that begin alike. */
interface Branch {
  /** The number of the feature that ends here, or undefined if none does. */
  number: number | undefined;
  next: Map<string, Branch> | undefined;
}

/**
 * Creates numbers for features. They are found value by value, in a tree. Most features of a place have no weight and
 * end at their first value, and no string has to be built for any of them.
 */
export function createFeatureNumbers(): FeatureNumbers {
  const root: Branch = { number: undefined, next: undefined };
  let size = 0;
  const numberOf = (feature: Feature): number => {
    let branch = root;
    for (const value of feature) {
      branch.next ??= new Map();
      const known = branch.next.get(value) ?? { number: undefined, next: undefined };
      branch.next.set(value, known);
      branch = known;
    }
    branch.number ??= size++;
    return branch.number;
  };
  return {
    read(written) {
      const weights = new Map<number, number>();
      if (written === '') return weights;
      for (const one of written.split(PARTED)) {
        const blank = one.lastIndexOf(' ');
        weights.set(numberOf(readFeature(one.slice(0, blank))), Number(one.slice(blank + 1)));
      }
      return weights;
    },
    find(feature) {
      let branch: Branch | undefined = root;
      for (let i = 0; i < feature.length && branch !== undefined; i++) branch = branch.next?.get(feature[i]!);
      return branch?.number;
    },
  };
}
