import type { Plugin } from 'vite';

/** The start of a UMD library that exports only if `require` exists, as in Node. A bundle has no `require`. */
const HEAD =
  /if \(typeof require === 'function' && typeof exports === 'object' && typeof module === 'object'\)/;

/**
 * Lets two UMD libraries export themselves in a bundle.
 * - `pluralize`, which `syllable` imports, would otherwise be an empty object in a bundle. Each word that nobody listed
 * would then make the background fail.
 * - `webextension-polyfill` gets its own export. The bundle's own handling of a UMD library looks at each part of the
 * browser's interface beforehand. That takes a tenth of the time until a stopped background answers.
 *
 * Throws when `pluralize` no longer begins with this head.
 */
export function openUmdHeads(): Plugin {
  return {
    name: 'open-umd-heads',
    enforce: 'pre',
    transform(code, id) {
      if (/\/webextension-polyfill\/dist\/[\w.-]+\.js$/.test(id))
        return {
          code: `const module = { exports: {} };\nconst { exports } = module;\n${code}\nexport default module.exports;\n`,
          map: null,
        };
      if (!/\/pluralize\/pluralize\.js$/.test(id)) return null;
      if (!HEAD.test(code))
        this.error('pluralize begins otherwise than before: see whether a bundle can import it.');
      return { code: code.replace(HEAD, 'if (true)'), map: null };
    },
  };
}
