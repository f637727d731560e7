import type { PageLine, PagePassage } from '../contract/page-contract.ts';
import type { Scope } from './choose-scope.ts';
import { findPlaces } from './find-places.ts';
import { findTextBlocks, type TextBlock } from './text-blocks.ts';
import { workInSlices } from './work-in-slices.ts';

/** Takes the checked text of a page, with its headings, paragraphs and lists. The page is not changed. */
export async function takePassage(doc: Document, scope: Scope, signal: AbortSignal): Promise<PagePassage> {
  const lines: PageLine[] = [];
  const take = (found: TextBlock): void => {
    const block = scope.narrow(found);
    if (!block) return;
    const kind = kindOf(block.nodes[0]!);
    const parent = block.nodes[0]!.parentElement;
    // Verse has a style that keeps its line breaks.
    const keepsLines = parent !== null && /pre|break/.test(getComputedStyle(parent).whiteSpace);
    const text = textOfBlock(block, scope);
    for (const line of keepsLines ? text.split('\n') : [text]) {
      const tidied = tidy(line);
      if (tidied) lines.push({ ...kind, text: tidied });
    }
  };
  await workInSlices(
    findTextBlocks(doc.body, () => undefined),
    take,
    signal,
  );
  return { lines, pictures: countPictures(doc, scope) };
}

/**
 * Returns the words of a block. If only a part is in the scope, the text runs from the first word of that part to its
 * last.
 */
function textOfBlock(block: TextBlock, { covers }: Scope): string {
  const { nodes, parted, broken } = block;
  const kept = nodes.filter((node) => !isFootnoteMark(node));
  if (covers) {
    const words = findPlaces(block).places.filter(covers);
    const first = words[0]?.ranges[0];
    const last = words.at(-1)?.ranges.at(-1);
    if (!first || !last) return '';
    const range = kept[0]!.ownerDocument.createRange();
    range.setStart(first.startContainer, first.startOffset);
    range.setEnd(last.endContainer, last.endOffset);
    return range.toString() + closingMark(last);
  }
  let text = '';
  for (const node of kept) {
    if (broken?.has(node)) {
      text = text.replace(/-$/, '') + node.data.trimStart();
      continue;
    }
    const runsOn = /[\p{L}\p{N}]$/u.test(text) && /^[\p{L}\p{N}]/u.test(node.data);
    text += parted.has(node) && runsOn ? ` ${node.data}` : node.data;
  }
  return text;
}

/** Returns the punctuation after the last wanted word, which belongs to that word. */
function closingMark({ endContainer, endOffset }: StaticRange): string {
  return /^[.,;:!?…’”'")\]]*/.exec((endContainer as Text).data.slice(endOffset))?.[0] ?? '';
}

function isFootnoteMark({ data, parentElement }: Text): boolean {
  return parentElement?.closest('sup') != null && /^[\s[\]()\d*†‡a-z]{1,5}$/.test(data);
}

function tidy(text: string): string {
  return text
    .replace(/\u00ad/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

function kindOf(node: Text): Pick<PageLine, 'kind' | 'level'> {
  const around = node.parentElement?.closest('h1, h2, h3, h4, h5, h6, li');
  if (!around) return { kind: 'paragraph', level: 0 };
  if (around.tagName === 'LI') return { kind: 'item', level: 0 };
  return { kind: 'heading', level: Number(around.tagName[1]) };
}

/** The least size of a picture, in CSS pixels. Smaller pictures are icons. */
const PICTURE = 80;

function countPictures(doc: Document, scope: Scope): number {
  return [...doc.querySelectorAll('img')].filter(
    (image) => image.width >= PICTURE && image.height >= PICTURE && scope.has(image),
  ).length;
}
