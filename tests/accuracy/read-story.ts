import { chooseScope } from '../../src/overlay/choose-scope.ts';
import { findArticle } from '../../src/overlay/find-article.ts';
import { findTextBlocks } from '../../src/overlay/text-blocks.ts';

/** The text that the overlay reads on a page. The overlay code runs in the page itself. */
export interface ReadStory {
  readonly scope: string;
  /** Every block of the page in order. `read` is the part of the block that is read, or empty if no part is read. */
  readonly blocks: readonly { readonly whole: string; readonly read: string; readonly place: string }[];
  /** How long the choice took, in milliseconds. */
  readonly took: number;
}

/**
 * Chooses the text as the overlay does. With `isLarge`, chooses as on a page that is too large for the finder of
 * articles.
 */
export async function readStory(isLarge: boolean): Promise<ReadStory> {
  const start = performance.now();
  const scope = await chooseScope(
    document,
    null,
    async () => (doc) => findArticle(doc, isLarge || undefined),
  );
  const took = performance.now() - start;
  const blocks = [...findTextBlocks(document.body, () => undefined)].map((block) => ({
    whole: join(block),
    read: join(scope.narrow(block)),
    place: placeOf(block.nodes[0]!),
  }));
  return { scope: scope.kind, blocks, took };
}

function join(block: { nodes: readonly Text[]; parted: ReadonlySet<Text> } | null): string {
  return (block?.nodes ?? []).map((node) => (block!.parted.has(node) ? ' ' : '') + node.data).join('');
}

function placeOf(node: Text): string {
  const names: string[] = [];
  for (let at = node.parentElement; at && at.tagName !== 'BODY'; at = at.parentElement) {
    const { id, classList, tagName } = at;
    names.unshift(
      [tagName.toLowerCase(), ...(id ? [`#${id}`] : []), ...[...classList].map((one) => `.${one}`)].join(''),
    );
  }
  return names.slice(-5).join(' > ');
}
