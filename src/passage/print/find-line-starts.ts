/**
 * Returns the offsets at which the browser begins the lines of a block of text, in UTF-16 units into the block's text.
 * The first offset is always 0. The offsets are measured from the layout, so the block must be laid out at its final
 * width.
 */
export function findLineStarts(block: Element): number[] {
  const place = measure(block);
  const text = block.textContent ?? '';
  const starts = [0];
  let bottom: number | null = null;
  for (const { index, 0: chunk } of text.matchAll(/\S+/g)) {
    const rects = place(index, index + chunk.length);
    const [first] = rects;
    if (!first) continue;
    const last = rects.at(-1)!;
    // A long word, or a word with a hyphen, may be broken across lines. In this case each letter is measured.
    const pieces =
      middle(last) <= first.bottom ? [{ at: index, rect: first }] : lettersOf(chunk, index, place);
    for (const { at, rect } of pieces) {
      if (bottom !== null && middle(rect) > bottom) starts.push(at);
      bottom = bottom === null || middle(rect) > bottom ? rect.bottom : bottom;
    }
  }
  return starts;
}

type Place = (start: number, end: number) => readonly DOMRect[];

function lettersOf(chunk: string, index: number, place: Place): { at: number; rect: DOMRect }[] {
  let at = index;
  return [...chunk].flatMap((letter) => {
    const start = at;
    at += letter.length;
    const rect = place(start, at)[0];
    return rect ? [{ at: start, rect }] : [];
  });
}

/** Returns a function that measures the boxes of a range of a block's text. */
function measure(block: Element): Place {
  const nodes: { node: Text; from: number }[] = [];
  const walker = document.createTreeWalker(block, NodeFilter.SHOW_TEXT);
  let from = 0;
  for (let node = walker.nextNode() as Text | null; node; node = walker.nextNode() as Text | null) {
    nodes.push({ node, from });
    from += node.length;
  }
  const range = document.createRange();
  const find = (offset: number) => nodes.findLast(({ from }) => from <= offset)!;
  return (start, end) => {
    const first = find(start);
    const last = find(end - 1);
    range.setStart(first.node, start - first.from);
    range.setEnd(last.node, end - last.from);
    return [...range.getClientRects()].filter(({ width }) => width > 0);
  };
}

function middle({ top, bottom }: DOMRect): number {
  return (top + bottom) / 2;
}
