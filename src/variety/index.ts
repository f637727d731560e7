export { type ForeignWord, findForeign, inVariety, isForeign } from './turn-text.ts';
export { listSpellings, listWordPairs, type VarietyKind, type VarietyPair } from './variety-table.ts';
