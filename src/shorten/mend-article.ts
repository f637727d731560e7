/** The text with the a or an that ends at `end` as the word behind it asks; the same text where none is there. */
export function correctArticleAt(text: string, end: number, takesAn: (word: string) => boolean): string {
  const article = /(?<![\p{L}'’-])(an?)$/iu.exec(text.slice(0, end))?.[1];
  const next = /^\s+([\p{L}]+)/u.exec(text.slice(end))?.[1];
  if (article === undefined || next === undefined) return text;
  const a = article.charAt(0);
  return text.slice(0, end - article.length) + (takesAn(next.toLowerCase()) ? `${a}n` : a) + text.slice(end);
}
