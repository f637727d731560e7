import { fileURLToPath } from 'node:url';
import { build, type Rollup } from 'vite';

declare global {
  var wordreachReader: typeof import('./read-words.ts');
}

/** Returns the code of `read-words.ts` for a page, where it is available as `wordreachReader`. */
export async function bundleReader(): Promise<string> {
  const entry = fileURLToPath(new URL('read-words.ts', import.meta.url));
  const built = (await build({
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    build: { write: false, minify: false, lib: { entry, formats: ['iife'], name: 'wordreachReader' } },
  })) as Rollup.RollupOutput[];
  return built[0]!.output[0].code.replace('var wordreachReader', 'globalThis.wordreachReader');
}
