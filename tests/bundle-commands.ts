import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Bundles the commands before the first test, for all tests that start a command. */
export function setup(): void {
  execFileSync(process.execPath, [
    fileURLToPath(new URL('../src/tools/bundle-commands.mjs', import.meta.url)),
  ]);
}
