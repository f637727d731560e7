export { createShortener, type Shortener } from './create-shortener.ts';
export type { RuleName, Shortening, ShortenOptions, Step } from './types.ts';
