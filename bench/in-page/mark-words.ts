import Mark from 'mark.js';

/**
 * The number of words given to the library at once. The library goes from one word of a list to the next by recursion,
 * and runs out of stack at some thousands of words.
 */
const AT_ONCE = 200;

/**
 * Does the work of a general highlighter for the same marks: wraps every occurrence of each word in an element. With
 * `list`, the library gets a list of words. With `pattern`, the library gets one pattern for all words, which is
 * faster, although the library is not made for this. Returns the time in milliseconds.
 */
export async function markWords(words: readonly string[], by: 'list' | 'pattern'): Promise<number> {
  const start = performance.now();
  if (by === 'pattern') {
    const pattern = new RegExp(`(?<![\\p{L}'’])(?:${words.join('|')})(?![\\p{L}'’])`, 'giu');
    await new Promise<void>((done) => new Mark(document.body).markRegExp(pattern, { done: () => done() }));
  } else {
    for (let at = 0; at < words.length; at += AT_ONCE) {
      await new Promise<void>((done) =>
        new Mark(document.body).mark(words.slice(at, at + AT_ONCE), {
          separateWordSearch: false,
          diacritics: false,
          accuracy: { value: 'exactly', limiters: [...' .,;:!?"“”‘’()-—'] },
          done: () => done(),
        }),
      );
    }
  }
  return performance.now() - start;
}

/** Removes the marks again. Returns the time in milliseconds. */
export async function unmarkWords(): Promise<number> {
  const start = performance.now();
  await new Promise<void>((done) => new Mark(document.body).unmark({ done: () => done() }));
  return performance.now() - start;
}
