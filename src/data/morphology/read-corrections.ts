import type { SpellingChange } from '../../analyze/types.ts';
import { readSourceRows } from '../read-source-rows.ts';
import type { Derivation } from './derivation.ts';
import type { Corrections } from './find-derivations.ts';

/** Reads source/morphology-deny.tsv (word, reason) and morphology-allow.tsv (word, base, affix, kind, change, reason). */
export function readCorrections(): Corrections {
  const deny = new Set(readSourceRows('morphology-deny.tsv').map(([word]) => word!));
  const allow = new Map<string, Pick<Derivation, 'base' | 'affix' | 'kind' | 'change'>>();
  for (const [word, base, affix, kind, change] of readSourceRows('morphology-allow.tsv')) {
    allow.set(word!, {
      base: base!,
      affix: affix!,
      kind: kind as Derivation['kind'],
      change: change as SpellingChange,
    });
  }
  return { deny, allow };
}
