/** What a text of the first shelf is. */
export const KINDS = ['story', 'news', 'how-to', 'poem', 'letter'] as const;

/** A text that comes with the extension, as a file of `profiles/texts` says it. */
export interface FirstText {
  /** The name of its file, which never changes: shelves keep it. */
  readonly name: string;
  readonly title: string;
  readonly kind: (typeof KINDS)[number];
  /** The id of a starter, and the step of it that the text practises. */
  readonly starter: string;
  readonly step: number;
  readonly text: string;
}

const files = import.meta.glob<string>('../../../profiles/texts/*.txt', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The texts of the first shelf, by the names of their files. */
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
