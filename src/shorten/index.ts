export { createShortener, type Shortener } from './create-shortener.ts';
export type { Shortening, ShortenOptions, Step } from './types.ts';
export type { RuleName } from './types.ts';
