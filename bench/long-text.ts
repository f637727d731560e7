import { readFileSync } from 'node:fs';

/**
 * Returns the bundled article again and again, with one line for each paragraph. No two lines are alike, as in a text
 * written by hand.
 */
export function longText(words: number): string {
  const article = readFileSync(new URL('../tests/pages/article.html', import.meta.url), 'utf8');
  const lines = [
    ...article.replace(/<(script|style)[\s\S]*?<\/\1>/g, '').matchAll(/<p[^>]*>([\s\S]*?)<\/p>/g),
  ]
    .map(([, text]) =>
      text!
        .replace(/<[^>]*>/g, '')
        .replace(/\s+/g, ' ')
        .trim(),
    )
    .filter((text) => text.length > 80);
  const parts: string[] = [];
  for (let count = 0, i = 0; count < words; i++) {
    const part = `${lines[i % lines.length]} ${i}.`;
    count += part.split(' ').length;
    parts.push(part);
  }
  return parts.join('\n');
}
