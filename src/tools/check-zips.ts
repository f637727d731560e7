import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * Builds the store packages twice, each time in its own folder, and compares them byte by byte. The second build uses
 * another time zone. `npm run zip:check`; exit code 1 if the packages differ.
 */
const root = fileURLToPath(new URL('../../', import.meta.url));
const [one, other] = ['UTC', 'Pacific/Auckland'].map(buildIn) as [Packages, Packages];
let same = true;
for (const [name, hash] of one) {
  const isSame = other.get(name) === hash;
  same &&= isSame;
  console.log(`${isSame ? 'same bytes' : 'DIFFERENT '}  ${hash.slice(0, 16)}  ${name}`);
}
if (one.size === 0 || one.size !== other.size || !same) {
  console.error(
    'Two builds differ. Unpack both and compare their files; what differs must not hang on time, order or place.',
  );
  process.exitCode = 1;
}

/** The SHA-256 of each built zip, by name. */
type Packages = ReadonlyMap<string, string>;

function buildIn(zone: string): Packages {
  // The folder is inside the repository, since the build finds its packages from there. git ignores it.
  const folder = mkdtempSync(join(root, '.output-zips-'));
  try {
    for (const browser of ['chrome', 'firefox']) {
      const { status, stderr } = spawnSync('npx', ['wxt', 'zip', '-b', browser], {
        cwd: root,
        env: { ...process.env, OUTPUT: folder, TZ: zone },
        encoding: 'utf8',
      });
      if (status !== 0)
        throw new Error(`The build for ${browser} failed. Run \`npm run zip\` to see why.\n${stderr}`);
    }
    const zips = readdirSync(folder).filter((name) => name.endsWith('.zip'));
    return new Map(
      zips.map((name) => [
        name,
        createHash('sha256')
          .update(readFileSync(join(folder, name)))
          .digest('hex'),
      ]),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
