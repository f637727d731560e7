import type { Plugin } from 'vite';

/** The start of a UMD library that exports only where a `require` is to be had, as in Node; a bundle has none. */
const HEAD =
  /if \(typeof require === 'function' && typeof exports === 'object' && typeof module === 'object'\)/;

/**
 * Lets `pluralize`, which `syllable` imports, export itself in a bundle too: without this its import is an empty object there, and each
 * word that nobody listed makes the background fail. Throws when the library no longer begins that way.
 */
export function openUmdHeads(): Plugin {
  return {
    name: 'open-umd-heads',
    enforce: 'pre',
    transform(code, id) {
      if (!/\/pluralize\/pluralize\.js$/.test(id)) return null;
      if (!HEAD.test(code))
        this.error('pluralize begins otherwise than before: see whether a bundle can import it.');
      return { code: code.replace(HEAD, 'if (true)'), map: null };
    },
  };
}
