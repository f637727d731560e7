import type { Plugin } from 'vite';

/**
 * Writes the scripts of the background and of pages in ASCII, with other letters as escapes. A browser keeps a script
 * with one curly quote in it as two bytes a letter, which was 580 KB of the memory of the background, and reads it more
 * slowly. Quotes occur only in texts and patterns, where an escape means the same.
 */
export function writeInAscii(): Plugin {
  return {
    name: 'write-in-ascii',
    generateBundle(_options, bundle) {
      for (const part of Object.values(bundle)) {
        if (part.type === 'chunk' && /^(?:background|page.*)\.js$/.test(part.fileName))
          part.code = inAscii(part.code);
      }
    },
  };
}

function inAscii(code: string): string {
  return code.replace(/[^\0-\x7f]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
