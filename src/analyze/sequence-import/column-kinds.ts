/**
 * The kind of content in a column, or in a line that begins with a column's name and a colon. `step` is the name of the
 * step. `title` names the step and says what it teaches, unless another cell says so more precisely.
 */
export type CellKind = 'step' | 'title' | 'patterns' | 'by-sight' | 'notes' | 'examples';

const names: Readonly<Record<Exclude<CellKind, 'title'>, string>> = {
  step: 'title|topic|theme|lesson title|unit title|lesson name|unit name|step|week|wk|unit|lesson|stage|level|set|day|term|half term|month|year|grade|no|number|order|when|date|dates|block|module|phase|session|week beginning|time|quarter|cycle|trimester|semester|chapter|weeks|wks|days|lessons|marking period|pacing',
  patterns:
    'phonics|phonic|phonics focus|phonics skill|phonics skills|phonics pattern|phonics patterns|pattern|patterns|concept|concepts|phonics concept|skill|skills|grapheme|graphemes|gpc|gpcs|sound|sounds|letter|letters|letters and sounds|letter sounds|spelling|spellings|spelling pattern|spelling patterns|focus|sound focus|new sounds|new sound|new|teach|new teaching|new learning|correspondence|correspondences|sound spelling|phoneme|phonemes|content|what we teach|new patterns|new letters|target|objective|objectives|code|phonics content|morphology|word study|taught|phoneme grapheme',
  'by-sight':
    'sight words|sight word|by sight|by sight words|words by sight|high frequency words|high frequency|hfw|hfws|hf|hf words|irregular words|tricky words|tricky|common exception words|exception words|cew|cews|irregular high frequency words|high frequency irregular words|new sight words|words to know|words taught by sight|whole words|learn by sight|irregular|word wall|word wall words|wall words|sight vocabulary|look and say|look and know|sight|memory words|memory word|must know|must know words|must know word|common words|common word|odd words|odd word|known by sight|words known by sight|words we just know|words we know by sight|just know|by heart|spell by heart|words by heart|learn by heart|non decodable words|undecodable words|everyday words|frequent words|instant words|flash words|words to memorise|words to memorize|words to learn by heart',
  notes:
    'student group|interventionist|author|prepared by|written by|compiled by|notes|note|comments|comment|remarks|review|reviewed|revision|resources|texts|text|book|books|reading|assessment|assessments|homework|activity|activities|dictation|story|materials|revise|extra|links|link|reminder|standard|standards|from|to|subject|cc|grammar|handwriting|teacher notes|pages|test|tests|tested|quiz|quizzes|done|check|checked|complete|completed|mastered|initials|dictation sentence|dictation sentences|sentences for dictation|decodable text|decodable book|read aloud|fluency|vocabulary',
  examples:
    'words to use|words to sort|words to blend|words to try out|words for dictation|words to dictate|dictation words|words for reading|words for spelling|words for practice|words we read|words we spell|words they read|model words|target words|try these|examples|example|example words|example word|key word|key words|keyword|keywords|sample words|words|practice words|word list|decodable words|anchor word|as in|words to read|cue word|spelling words|spelling list|word list|word lists|word bank|practice list|words to spell|spell|read and spell|try at home|sample word|reading words|word work words|words to try|home words|test words|list|picture words|picture|picture word',
};

const kinds: ReadonlyMap<string, CellKind> = new Map(
  Object.entries(names).flatMap(([kind, list]) => list.split('|').map((name) => [name, kind as CellKind])),
);

/**
 * Returns the content that a column's name announces, whatever its case and punctuation. Returns null for any other
 * text.
 */
export function findColumnKind(name: string): CellKind | null {
  // Skips whole paragraphs. No column name is this long.
  if (name.length > 60) return null;
  const plain = name
    .toLowerCase()
    .replace(/\(.*\)/, ' ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/\bwds?\b/g, 'words')
    .replace(/\b(?:hi|high) freq\b/g, 'high frequency')
    .trim();
  // In "cc (raccoon)" the cc means letters and is not a column's name.
  if (plain === 'cc' && name.includes('(')) return null;
  return kinds.get(plain) ?? (name.trim() === '#' ? 'step' : null);
}

/** Words in a head that show the kind of a column: "New grapheme", "Decodable text". The first match counts. */
const telling: readonly (readonly [CellKind, RegExp])[] = [
  [
    'by-sight',
    /\b(?:sight|by heart|remember|outlaws?|demons?|must.?know|common|memor|instant|flash|tricky|irregular|exception|frequency|hfw|word wall|rule breaker|(?:hard|odd) words?\b|\S*-hard\b)/,
  ],
  [
    'notes',
    /\b(?:notes?|teachers?|who teaches|taught by|staff|grammar|handwriting|where in word|comments?|texts?|books?|reviews?|readers?|stor(?:y|ies)|resources?|dictation|meanings?|means|definitions?|tests?|tested|quiz(?:zes)?|done|checked|completed?|mastered|initials)\b/,
  ],
  [
    'examples',
    /\b(?:examples?|key ?words?|words|(?:and|to|we|they|can|you) (?:read|spell|build|blend|decode|write|try)|(?:read|blend|decode|build|spell|write) (?:and|it|them|these|this))\b/,
  ],
  [
    'patterns',
    /\b(?:phonics?|graphemes?|gpcs?|sounds?|patterns?|skills?|concepts?|focus|spellings?|spelled|correspondences?|letters?|targets?|objectives?|endings|affixes|word parts?|code|taught|teach(?:es|ing)?|content|vowels?|consonants?|digraphs?|blends?|teams?|diphthongs?|suffix(?:es)?|prefix(?:es)?|roots?|syllables?|morphemes?)\b|^(?:mon|tue|tues|wed|thu|thur|thurs|fri)(?:s?day|nesday|rsday)?\.?$/,
  ],
  ['step', /\b(?:week|wk|unit|lesson|step|term|day|date|title|topic|theme|name)\b/],
];

/**
 * Returns the content that the head of a column announces. This function is less strict than `findColumnKind` and is
 * used for a line known to be a head. A text of more than `longest` words must be an exact name.
 */
export function findHeadKind(name: string, longest = 4): CellKind | null {
  // "Spelling list" may announce words or their spellings. The cells decide.
  const exact = /^spelling lists?$/i.test(name.trim()) ? 'patterns' : findColumnKind(name);
  if (exact !== null || name.length > 60 || name.trim().split(/\s+/).length > longest) return exact;
  return telling.find(([, words]) => words.test(name.toLowerCase()))?.[0] ?? null;
}

/**
 * The start of a list of by-sight words without a colon: `sh. Tricky words said`, `sh - HFW what`. A punctuation mark
 * precedes it and a word follows.
 */
export const sightListStart = new RegExp(
  `(?<=[.;),]\\s+|\\s[-–—]\\s+|\\s{2})(?:also )?(?:${names['by-sight']
    .split('|')
    .filter((name) => name.includes(' ') || /^(?:hfw?|cew)s?$/.test(name))
    .sort((a, b) => b.length - a.length)
    .map((name) =>
      name.replace(/words$/, 'w(?:or)?ds').replace('high frequency', 'hi(?:gh)?[- ]freq(?:uency|\\.)?'),
    )
    .join('|')})(?=\\s+[\\p{L}"“])`,
  'giu',
);
