const filler = [
  'the|of|with|for|and|word|sound|spelling|spelled|spelt|spell|pattern|letter|grapheme|phoneme|phonic|intro',
  'introduce|introducing|new|focus|teach|practise|practice|rule|ending|vowel|correspondence|made|both|final',
  'initial|position|begin|beginning|end|start|at|name|s|syllable|type|to|root|adding|add|common|alternative',
  'next|come|follow|learner|children|child|pupil|student|then|verb|noun|adjective|adverb|person|third',
  'singular|present|tense|hissing|together|two|main|few|some|many|single|simple',
  'before|after|short|long|consonant|way|more|unit|change|no|reading|blending|all|other|voiced|unvoiced|voiceless',
  // General words that only join other words.
  'this|that|these|those|which|who|whose|it|its|they|them|their|we|us|our|you|your|he|she|one|each|every|any|another',
  'be|are|am|was|were|been|being|do|does|did|can|could|will|would|may|might|must|shall|should|have|has|had|so|such',
  'on|onto|into|by|from|about|between|within|inside|through|during|over|under|up|out|than|too|also|just|only|very',
  'still|often|usually|always|sometimes|mostly|again|now|here|there|where|how|what|much|most|less|own|same|right',
  // Verbs for the work of teachers and children with letters.
  'read|write|hear|see|use|used|using|know|learn|decode|encode|recognise|recognize|identify|say|make|take|give|show',
  'understand|find|match|link|represent|stand|work|begun|taught|learnt|learned|known|writing|decoding|encoding',
  'half|term|week|month|day|year|lesson|session|autumn|winter|spring|summer|fall|january|february|march|april|june',
  'july|august|september|october|november|december|class|group|school|finish|continue|move|meet|work',
  'share|contain|containing|regular|regularly|appropriate|basic|first|second|last|middle|next|like|called|three|four',
].flatMap((row) => row.split('|'));

/** Words between letters and an example or a sound: rain is an example in `ai as in rain`. */
export const hintWords: ReadonlySet<string> = new Set([
  'as',
  'like',
  'eg',
  'in',
  'says',
  'say',
  'saying',
  'makes',
  'making',
  'is',
  'sounds',
  'pronounced',
  'pronouncing',
  'heard',
  'sounded',
  'sounding',
  'such',
  'example',
  'ex',
]);

/** Words that mean a step without new teaching. */
export const restWords: ReadonlySet<string> = new Set([
  'review',
  'revision',
  'revise',
  'recap',
  'assessment',
  'assess',
  'assessments',
  'assessing',
  'test',
  'tests',
  'testing',
  'reviews',
  'reteach',
  'reteaching',
  'quiz',
  'exam',
  'exams',
  'examination',
  'examinations',
  'vacation',
  'inset',
  'checkpoint',
  'buffer',
  'flex',
  'screening',
  'screener',
  'benchmark',
  'recess',
  'consolidating',
  'consolidation',
  'consolidate',
  'break',
  'holiday',
  'holidays',
  'catchup',
  'none',
  'tbc',
]);

/**
 * Words that tell how the text after them belongs to the text before. If no rule knows how, the text after them is a
 * guess.
 */
export const looseWords: ReadonlySet<string> = new Set([
  'with',
  'without',
  'in',
  'from',
  'for',
  'by',
  'at',
  'to',
  'not',
  'except',
]);

/** Words that alone say nothing about the content taught: "the sound of". */
export const fillerWords: ReadonlySet<string> = new Set(filler.flatMap((word) => [word, `${word}s`]));

/** Words after which nothing is sure, because they may say anything about the letters beside them. */
export const hedgeWords: ReadonlySet<string> = new Set([
  'through',
  'until',
  'than',
  'instead',
  'versus',
  'vs',
  'contrast',
  'contrasting',
  'compare',
  'comparing',
  'but',
  'yet',
  'rather',
  'between',
  'from',
  'may',
  'might',
  'elsewhere',
]);
