/** The kinds of texts on the first shelf. */
export const KINDS = ['story', 'news', 'how-to', 'poem', 'letter'] as const;

/** A text that comes with the extension, as written in a file of `profiles/texts`. */
export interface FirstText {
  /** The name of the text's file. It never changes, because shelves store it. */
  readonly name: string;
  readonly title: string;
  readonly kind: (typeof KINDS)[number];
  /** The id of a starter, and the step of that starter that the text practises. */
  readonly starter: string;
  readonly step: number;
  readonly text: string;
}

const files = import.meta.glob<string>('../../../profiles/texts/*.txt', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The texts of the first shelf, in the order of their file names. */
export const firstTexts: readonly FirstText[] = Object.entries(files).map(([path, content]) => {
  const end = content.indexOf('\n\n');
  const head = new Map(
    content
      .slice(0, end)
      .split('\n')
      .map((line) => line.split(': ') as [string, string]),
  );
  return {
    name: path.replace(/^.*\/|\.txt$/g, ''),
    title: head.get('title')!,
    kind: head.get('kind') as FirstText['kind'],
    starter: head.get('starter')!,
    step: Number(head.get('step')),
    text: content.slice(end).trim(),
  };
});
