const kinds =
  'week|wk|unit|lesson|step|stage|phase|level|set|day|module|block|part|term|year|grade|gr|group|session|quarter|section|month|cycle|trimester|semester|sem|trim|chapter|meeting|visit|round|card|batch|sitting';
/** The first letters of the months. */
export const MONTHS = 'jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec';
const number =
  // "semi-" does not mean semester I.
  '(?:\\d{1,3}[a-z]?|[a-z]\\d{1,2}|(?<!\\p{L})(?:[ivx]{1,5}|one|two|three|four|five|six|seven|eight|nine|ten|[a-h]))';
const numbered = new RegExp(
  `^(?<kind>${kinds})s?\\.?\\s*(?:no\\.?\\s*|number\\s+|#\\s*)?(?:k(?:indergarten)?|${number})(?:\\s*(?:-|–|to|&|and|/|,)\\s*(?:\\d{1,3}))*(?![\\p{L}\\p{N}])`,
  'iu',
);
const dated =
  /^(?<kind>week|wk)\.?\s+(?:of|beginning|commencing|starting|ending)\s+[^:–—|]{1,24}?(?=\s*(?:[:–—|]|\s-\s|$))/iu;
/** The week that begins on a date: `w/b 6 Jan`, `wc 3/2`. */
const begun = new RegExp(
  `^(?<kind>w)\\s?/?\\s?[bc]\\.?:?\\s+(?:\\d{1,2}(?:st|nd|rd|th)?\\s+(?:${MONTHS})\\p{L}*|(?:${MONTHS})\\p{L}*\\.?\\s+\\d{1,2}|\\d{1,2}[/.]\\d{1,2}(?:[/.]\\d{2,4})?)(?![\\p{L}\\p{N}])`,
  'iu',
);
/** A range of days: `17-21 Feb`, `Feb 17-21`, `9/12-9/16`, and `3 - 6` alone or before a wide gap. */
const days = new RegExp(
  `^\\d{1,2}\\s*[-–]\\s*\\d{1,2}(?:\\s+(?:${MONTHS})\\p{L}*\\.?(?=\\s|[:–—-]|$)|(?=\\s{2,}|\\s*[:|]|$))|^(?:${MONTHS})\\p{L}*\\.?\\s+\\d{1,2}\\s*[-–]\\s*(?:(?:${MONTHS})\\p{L}*\\.?\\s+)?\\d{1,2}(?![\\p{L}\\p{N}])|^\\d{1,2}/\\d{1,2}\\s*[-–]\\s*(?:\\d{1,2}/)?\\d{1,2}(?![\\p{L}\\p{N}/])`,
  'iu',
);
/** One date before a sign or alone: `Jan 6 -`, `6 Jan:`, `Mon 6 January`, `1/6:`, `2024-09-09`. */
const date = new RegExp(
  `^(?:(?:mon|tue|wed|thu|fri)\\p{L}*\\.?,?\\s+)?(?:(?:${MONTHS})\\p{L}*\\.?\\s+\\d{1,2}(?:st|nd|rd|th)?|\\d{1,2}(?:st|nd|rd|th)?\\s+(?:${MONTHS})\\p{L}*|\\d{1,2}[/.]\\d{1,2}(?:[/.]\\d{2,4})?|\\d{4}-\\d{2}-\\d{2})(?=\\s*(?:[:–—|(]|\\s-\\s|$))`,
  'iu',
);
/** Whether the name of a step contains only dates. */
export function isDates(text: string): boolean {
  return begun.test(text) || days.test(text);
}

/** A date followed, without a sign, by the content taught then: "9/12 short i", "Tue Sept 4 sh", "10/3 /j/ and ck". */
const datedLine = new RegExp(
  `^(\\s*(?:(?:mon|tue|wed|thu|fri)\\p{L}{0,6}\\.?,?\\s+)?(?:(?:0?[1-9]|1[0-2])/(?:0?[1-9]|[12]\\d|3[01])(?:/\\d{2,4})?|(?:${MONTHS})\\p{L}{0,6}\\.? (?:[12]\\d|3[01]|[1-9])))\\s+(?=[-\\p{L}"“‘(<]|/\\S|\\d[- ]\\p{L}{3})`,
  'iu',
);

/** The fewest lines that begin with a date if each of these lines is a step. */
const DATED = 4;

/** Adds a colon after each date in a list of dated lines, so that the dates become names of steps. */
export function markDates(lines: readonly string[]): readonly string[] {
  if (lines.filter((line) => datedLine.test(line)).length < DATED) return lines;
  return lines.map((line) => line.replace(datedLine, '$1: '));
}

const called = new RegExp(
  '^(?<kind>(?:first|second|third|fourth|1st|2nd|3rd|4th)\\s+(?:half\\s+)?(?:term|half|grade|quarter|semester)' +
    '|(?:autumn|fall|winter|spring|summer)(?:\\s+(?:term|half term))?(?:\\s+\\d)?(?![\\p{L}\\p{N}])' +
    '|(?:january|february|march|april|may|june|july|august|september|october|november|december)(?![\\p{L}\\p{N}])' +
    '|(?:jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec)\\.?(?=\\s*(?:[:–—|]|-{2}|$)|\\s+-\\s)' +
    '|kindergarten|reception|nursery|pre-k)(?![\\p{L}\\p{N}])',
  'iu',
);
/** Terms, quarters, units, weeks and lessons by their first letters: `T1 W3`, `W3`, `U2 L4`. */
const shortened = /^(?:[TQUGY]\d{1,2}[\s.·:-]*)?(?<kind>W|Wk|L|U|Q|T)\.?\d{1,2}(?=[\s:.)–—-]|$)/u;
/** A number after any word and before an arrow: `Stop 3 >>`. */
const pointed = /^(?<kind>\p{L}{2,12})\s+\d{1,3}(?=\s*(?:>>|»|=>|->|→))/u;
const ordinal = /^(?:\(?\d{1,3}[a-z]?[.)]|#\d{1,3}[.):]?|\d{1,3}(?::|\s+[-–—]))(?=\s)/u;
/** A number with several levels or the number of a standard: `2.10`, `K.3`, `RF.2.3a`. */
const coded =
  /^(?:[A-Z\d][A-Za-z]{0,2}\.){2}\d{1,2}[.):]?(?=\s)|^(?:[A-Z]{1,3}[.-])*\d{1,2}(?:[.-]\d{1,2}){1,2}[a-z]?[.):]?(?=\s)|^(?:[A-Z]{1,3}\.)+\d{1,2}[a-z]?[.):]?(?=\s)/u;

/** Verbs after a step's name that begins a sentence: "Week three is sh", "Unit 4 covers ai". */
const sentence = /^\s+(?:is|starts with|begins with|has|brings|covers|adds|introduces|focuses on)(?=\s)/i;

const sentenceEnd = /\s+(?:is|starts with|begins with|has|brings|covers|adds|introduces|focuses on)$/i;

/**
 * Pages, days, weeks or dates in brackets after the name of a step. A hyphen that begins an ending after the brackets
 * is kept.
 */
const measured = new RegExp(
  '^\\(\\s*(?:(?:pp?\\.?|pages?|days?|wks?\\.?|weeks?(?: of)?|lessons?|sessions?|about|approx\\.?|~)?\\s*\\d[\\d\\s.,/–—-]*(?:days?|wks?\\.?|weeks?|lessons?|sessions?|mins?|minutes?|hours?|hrs?)?' +
    `|(?:(?:week of )?(?:${MONTHS})\\p{L}*\\.?\\s*\\d[\\d\\s,–—-]*){1,2})\\s*\\)(?:[\\s:.;–—]|-(?=\\s|$))*`,
  'iu',
);

/** The most characters of brackets with pages, days, weeks or dates. */
const LONGEST_MEASURE = 60;

/** A line that begins a step: its title, the kind of unit it counts, and the rest of the line. */
export interface StepHeading {
  readonly title: string;
  /** `week`, `term`, `number`, `month`, … */
  readonly kind: string;
  readonly rest: string;
}

/**
 * Reads the name of a step at the start of a line. `Week 3: sh, ch` has the name "Week 3", and `Autumn 1, Week 2` is a
 * week. `4. sh` has the name "4", and `2.10 - sh` has "2.10". Returns null for other lines, such as `May we go?` and
 * `Set a place`.
 */
export function readStepHeading(line: string): StepHeading | null {
  let rest = line;
  let kind: string | null = null;
  const dates = begun.exec(line) ?? days.exec(line) ?? date.exec(line);
  if (dates !== null) {
    rest = line.slice(dates[0].length).replace(/^(?:[\s:.,;–—|]|-(?=\s|$))+/, '');
    return { title: titleOf(line, rest), kind: 'week', rest };
  }
  for (let turn = 0; turn < 3; turn++) {
    const counted = numbered.exec(rest);
    const found =
      dated.exec(rest) ?? counted ?? called.exec(rest) ?? shortened.exec(rest) ?? pointed.exec(rest);
    if (found === null) break;
    const after = rest.slice(found[0].length);
    // A name is followed by a sign or is the whole text. "May we" and "Group a few" are not names.
    // "March brings wind" is an ordinary sentence.
    const says = found === counted ? (sentence.exec(after)?.[0] ?? '') : '';
    if (says === '' && !endsName(found[0], after)) break;
    kind = unitOf(found.groups!.kind!);
    rest = after.slice(says.length).replace(/^(?:[\s:.,;–—|·•»→]|>>|[=-]>|-{1,3}(?=\s|$))+/, '');
    if (says !== '') break;
  }
  // "Lesson 3 (p. 12): sh", "Unit 2 (days 1-5)"
  if (kind !== null) rest = rest.slice((measured.exec(rest.slice(0, LONGEST_MEASURE)) ?? [''])[0].length);
  if (kind !== null) return { title: titleOf(line, rest), kind, rest };
  const code = coded.exec(line);
  const found = code ?? ordinal.exec(line);
  if (found === null) return null;
  const after = line.slice(found[0].length).trim();
  return code === null
    ? { title: found[0].replace(/[^\da-z]/g, ''), kind: 'number', rest: after }
    : {
        title: code[0].replace(/[.):]$/, ''),
        kind: 'number',
        rest: after.replace(/^(?:[:–—-]\s*)+(?=\s|\p{L})/u, ''),
      };
}

/**
 * Whether the name of a step is complete. It ends in a digit, or a sign, another name or nothing follows: "Kindergarten
 * Unit 2", "Fall Week 3".
 */
function endsName(name: string, after: string): boolean {
  return /\d$/.test(name) || numbered.test(after.trimStart()) || /^\s*(?:$|[:.,;–—(|/·-])/.test(after);
}

const lettered = /^\(?(?:(?<roman>[IVX]{1,4}|[ivx]{2,4})|(?<letter>[A-Za-z]))[.)](?=\s)/;

/**
 * Reads the letter or Roman number at the start of a line of an outline: `B. Open` and `II. Affixes`. The lines around
 * it decide whether it counts steps: `I. Alder` may be a name.
 */
export function readLetterHeading(line: string): StepHeading | null {
  const found = lettered.exec(line);
  if (found === null) return null;
  const title = found[0].replace(/[(.)]/g, '');
  return {
    title,
    kind: found.groups!.roman === undefined ? 'letter' : 'roman',
    rest: line.slice(found[0].length).trim(),
  };
}

function titleOf(line: string, rest: string): string {
  return line
    .slice(0, line.length - rest.length)
    .replace(/[\s:.,;–—|/·»→>=-]+$/, '')
    .replace(sentenceEnd, '');
}

const shortNames: Readonly<Record<string, string>> = {
  wk: 'week',
  w: 'week',
  l: 'lesson',
  u: 'unit',
  q: 'quarter',
  t: 'term',
};

const monthly = new RegExp(`^(?:${MONTHS})`);

function unitOf(kind: string): string {
  const plain = kind.toLowerCase();
  if (/half|term|autumn|fall|winter|spring|summer/.test(plain)) return 'term';
  if (/grade|kinder|reception|nursery|pre-k/.test(plain)) return 'year';
  if (monthly.test(plain)) return 'month';
  return shortNames[plain] ?? plain;
}
