/**
 * Words correct a minute: words read without the errors, by the time taken. Common practice, no source. Null where the figures make
 * none: no time, or more errors than words.
 * @param seconds Time taken.
 */
export function wordsCorrectAMinute(words: number, errors: number, seconds: number): number | null {
  const isCount = (value: number): boolean => Number.isFinite(value) && value >= 0;
  if (!isCount(words) || !isCount(errors) || !Number.isFinite(seconds) || seconds <= 0 || errors > words)
    return null;
  return Math.round(((words - errors) * 60) / seconds);
}
