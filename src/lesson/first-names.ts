import type { Analyzer } from '../analyze/index.ts';

/** First names that are mostly one or the other, from memory; a group's names that are none of these may be places or boats. */
export const HE: readonly string[] =
  'Sam Ben Ned Kit Tim Dan Tom Jim Jack Ted Max Finn Fred Bram Otto Gus Sid Len Dev Raj Ravi Omar Jay Ali Ahmed Amir Noah Leo Luis Mateo Hugo Theo Adam Luke Jake Mike James Dean Paul Carl Karl Owen Yusuf Ivan Marco Pedro Diego Juan Carlos Ibrahim Hassan'.split(
    ' ',
  );
export const SHE: readonly string[] =
  'Meg Jen Pam Tess Beth Jess Nell Liz Jill Ines Wilma Kim Jan Bess Fran Jane Kate Eve Jade Ruth Ann Anna Emma Ella Mia Ava Zoe Lucy Amy Ruby Sara Sarah Nina Maya Aisha Fatima Zara Leila Layla Priya Mei Sofia Maria Rosa Elena Lola Carla Olivia Ada Ivy Molly Polly'.split(
    ' ',
  );
/** First names that are words, too, from memory. */
const WORDS_TOO =
  'Rose Daisy Lily Poppy Holly Hazel Heather Violet Iris Jasmine Willow Ivy Fern Robin Grace Hope Faith Joy Dawn Amber Pearl Summer Autumn April May June Will Bill Mark Jack Frank Rob Bob Nick Pat Grant Drew Chase Miles Reed Hunter Mason Carter Cooper Parker Taylor Sky River Eden Angel Art Dale Glen Clay Gene Ray Roy Rex Skip Tad Penny Sandy Candy Gale Gail Robin Jean Kitty Misty Stella Star Stormy Rusty'.split(
    ' ',
  );
const FIRST_NAMES: ReadonlySet<string> = new Set([...HE, ...SHE, ...WORDS_TOO]);

/** The names of a group that may be people in a sentence: any but a word that is no first name, which is a place or a boat (Quay, Marigold). */
export function namesOfPeople(names: readonly string[], analyzer: Analyzer): string[] {
  return names.filter(
    (name) => FIRST_NAMES.has(name) || !/common|rare/.test(analyzer.analyze(name).usage ?? ''),
  );
}
