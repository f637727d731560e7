import { readFileSync } from 'node:fs';
import type { SpellingChange } from '../../analyze/types.ts';
import type { Derivation } from './derivation.ts';
import type { Corrections } from './find-derivations.ts';

/** Reads source/morphology-deny.tsv (word, reason) and morphology-allow.tsv (word, base, affix, kind, change, reason). */
export function readCorrections(): Corrections {
  const deny = new Set(readRows('morphology-deny.tsv').map(([word]) => word!));
  const allow = new Map<string, Pick<Derivation, 'base' | 'affix' | 'kind' | 'change'>>();
  for (const [word, base, affix, kind, change] of readRows('morphology-allow.tsv')) {
    allow.set(word!, {
      base: base!,
      affix: affix!,
      kind: kind as Derivation['kind'],
      change: change as SpellingChange,
    });
  }
  return { deny, allow };
}

function readRows(file: string): string[][] {
  const text = readFileSync(new URL(`../source/${file}`, import.meta.url), 'utf8');
  const [, ...lines] = text.trimEnd().split('\n');
  return lines.map((line) => line.split('\t'));
}
