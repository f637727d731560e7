import { isTrade, mendWord } from './mend-word.ts';
import { restWords } from './word-roles.ts';

/** Words that may be beside "review" or "break" in a text that still teaches nothing. */
const companions = new Set(
  [
    'back annual yearly week weeks day days lesson lessons unit units step steps term terms half school year years quarter month time',
    'of the and or to all any from in on for with our as at this that so far previous earlier past last end mid new',
    'no up check catch flex buffer make spring summer autumn fall winter easter christmas thanksgiving bank public',
    'floating flexible spare free off window period cycle pause',
    'gaps progress pupil pupils student students data benchmark monitoring screening screener formal informal phonics',
    'taught learned learnt known sounds sound letters letter words word patterns pattern skills skill content',
    'everything cumulative mixed extra further re practice practise through until only first second third final start',
    'check checks performance task project presentation celebration conferences',
    'reading spelling checkpoint routines routine k pk eoy boy moy grade teacher report cards conference parent above again open secure needed as one two three four five six week1 teaching apply and application',
  ].flatMap((row) => row.split(' ')),
);

/** Phrases that mean a week without teaching, although their words alone do not. */
const phrases =
  /\b(?:half term|no (?:new )?(?:teaching|school|letters?|sounds?|content|patterns?|learning)|catch ?up|checks?|check ?(?:up|in|point)|make up|end of (?:year|term|unit))\b/;

/** Whether a clause says that nothing new is taught: a review, an assessment, a break. The clause names no letters. */
export function isRestWeek(text: string): boolean {
  if (/^n\s?\/\s?a\.?$/i.test(text.trim())) return true;
  const words = (text.toLowerCase().match(/[\p{L}]+|\p{N}+/gu) ?? []).map((word) =>
    /^(?:re|as|ho|sc)/.test(word) && !restWords.has(word) ? mendWord(word) : word,
  );
  const plain = words.join(' ');
  const rests = words.filter((word) => restWords.has(word));
  if (rests.length === 0 && !phrases.test(plain)) return false;
  return words.every((word) => restWords.has(word) || companions.has(word) || /^\p{N}+$/u.test(word));
}

/** Whether a clause says that nothing is new, whatever it names: "Mixed short and long vowels, nothing new". */
export function saysNothingAtAll(text: string): boolean {
  return /\b(?:nothing (?:new|is (?:taught|added))|no new (?:sounds?|letters?|phonics|skills?|patterns?|content|teaching|learning|material|spellings?))\b(?!.*\b(?:but|except|then)\b)/i.test(
    text,
  );
}

/** The most characters of a remark. */
const LONGEST_REMARK = 800;

/** Whether a clause says that there is no teaching at all: "no phonics". */
export function deniesTeaching(text: string): boolean {
  if (text.length > LONGEST_REMARK) return false;
  return nothingNew.test(text.replace(/(?<=\p{L}.*)\([^)]*\)/gu, ' '));
}

/**
 * Whether a clause says in words that nothing new is taught, whatever else it tells of the week: "Spring concert, no
 * new teaching", "Sports week".
 */
export function saysNothingNew(text: string): boolean {
  // A remark in brackets after other text does not count: "geo (no list yet)".
  return deniesTeaching(text) || (text.split(/\s+/).length <= LONGEST_EVENT && events.test(text));
}

const nothingNew =
  /\bnothing (?:new|is (?:taught|added))\b|\b(?:no|without) (?:new|phonics|school|class(?:es)?|lessons?|teaching|instruction|list|group|grp|letters?|sounds?|spellings?|phonics|homework|target|words?|patterns?)\b/i;

/** The most words of a text about an event other than teaching. */
const LONGEST_EVENT = 9;

/** Events that fill a week, and tasks done by ear, without letters: "Sports week", "names and songs", "exit test". */
const events =
  /\b(?:minimal pairs?|(?:word |picture )?sorts?|sorting|word (?:ladders?|chains?|chaining)|decodable (?:texts?|passages?|readers?|books?)|re-?read(?:ing)?|timed|(?<!of the )weeks?|print concepts|concepts (?:of|about) print|counting (?:words|syllables)|(?:upper|lower) ?case|chang(?:e|ing) (?:one|a) (?:sound|letter)|(?<!^)days?(?! of)|party|parties|picnics?|bingo|goodbyes?|re-?tests?|assess(?:es|ing|ments?)?|portfolios?|interviews?|placement|goal[- ]setting|baseline|check(?:s|-?ups?|-?ins?|points?)?|warm-?ups?|wrap-? ?up|workdays?|work days?|teacher days?|report cards?|testing|screen(?:er|ers|ing)|inventory|get-to-know|holidays?|vacation|recess|closed for|celebrat(?:e|es|ion|ions)|assembly|nativity|carols?|pageant|performance|inset|exams?|graduation|orientation|welcome|farewell|swap|library|proof-?reading|alphabetical order|dictionary skills|cursive|punctuation|capital letters|letter[- ]nam(?:es?|ing)|nam(?:e|ing) (?:of )?(?:the )?letters|full stops|question marks|review|revision|catch-? ?up|carry-? ?over|spill-? ?over|games?|concert|play|trip|fair|festival|thanksgiving|christmas|easter|hanukkah|eid|diwali|new year|intersession|fluency|practi[cs]e|routines?|settling|songs?|rhym(?:e|es|ing)|onsets?|alliteration|segment(?:ing)?|blending|(?:first|last|final|middle|beginning|ending) sounds?|change a sound|(?:beats|claps?|clapping)|survey|diagnostics?|conferences?|dictation|handwriting|re-?check|redo|test|quiz|exam|benchmark|benchmk|monitoring|cold read|probes?|mtg|meetings?|drill|carnival|mop-?up|moderation|swim(?:ming)?|visits|museum|project|photos?|parade|worksheets?|settle|prac|rehearsals?|production|open house|snow day|make-?ups?|catch|data|portfolio|awards|homophones?|homographs?|vacances|repaso|vacaciones|feriado|prueba|toets|hersiening|vakansie|gwyliau)\b|(?:^|\s)(?:r[ée]vision|[ée]valuations?|cong[ée]|rel[âa]che|f[êe]te|evaluaci[óo]n)(?!\p{L})/iu;

/**
 * Wordings of clauses that only go over earlier content (common practice, no source). They match the beginning, the end
 * or the whole of a clause.
 */
const goneOver: readonly RegExp[] = [
  /^(?:rev(?:iew|iews|iewing|ise|ising|ision|isit|isiting)?|recap|redo|re-?check|re-?teach|catch-? ?up|assess(?:ing|ment)?|quiz|test(?:ing)?|check(?:ing)?)\b(?!.*\b(?:then|new|plus|introduce|teach|begin|start|add|adds|adding|extend)\b)/i,
  /^[^.;:]*\breview(?:\s*:.*)?$/i,
  // Matches "Mid-year assessment: letter names and sounds" and "vowel team review and end-of-year test".
  /^(?:[\p{L}\p{N}'’-]+ ){0,6}(?:assessments?|screeners?|screening|benchmark|inventory|check-?(?:in|up|point)|test|quiz)\s*(?::|\s[-–—]\s)/iu,
  // Matches "Fall review of short vowels - skip if they passed".
  /^(?:[\p{L}-]+ ){0,3}(?:review|revision|recap) (?:of|from)\b(?!.*\b(?:then|new|plus|introduce|teach|begin|start|add|adds|adding|extend)\b)/iu,
  /^[^,;:]*\breview (?:and|&|\+|\/) (?:[\p{L}-]+ ){0,4}(?:assessments?|screener|screening|benchmark|check-?(?:in|up|point)?|tests?|testing|quiz)$/iu,
  // Matches "Watch tr and dr in spelling".
  /^(?:watch|beware|careful)\b/i,
  /^(?:(?:upper|lower) ?case |capital )?letter[- ]?nam(?:es|ing)$/i,
  /^(?:skip|off|none|mixed(?: (?:practi[cs]e|review|together|up))?)$/i,
  // Matches "Short vowels, silent e and the first vowel teams from Grade 1".
  /^(?!.*\b(?:then|new|plus|introduce|teach|begin|start|add)\b).*\bfrom (?:(?:grade|gr|year|yr)\.? ?\d|kindergarten|first grade|last (?:year|grade|term|month|week))$/i,
  /^(?:warm-? ?up|go over|practi[cs]e|keep practi[cs]ing|look back)\b.*\b(?:so far|again|from before|taught|learn(?:ed|t))$/i,
  /^(?:all|everything|all of)\b.*\b(?:above|so far|again|before|to date|taught|learn(?:ed|t))$/i,
  /^(?:no school\b|(?:baseline|pre-?test|post-?test|screen(?:er|ing)?|diagnostics?|benchmark|survey)\b(?!.*\b(?:then|new|plus|introduce|teach|begin|start|add|adds|adding|extend)\b))/i,
  /^(?:off|none|no school|tba|tbd)\s*(?:[-–—,;:(]|$)/i,
  /\bby ear$/i,
  // Matches "Only if the group can read CVC words".
  /^only (?:if|when)\b/i,
  // Matches "blend VC and CVC words" and "sh/ch sort".
  /^blend(?:ing)? (?:(?:and segment(?:ing)?|\d|two|three|vc|cvc|cv|short|simple|letter|sounds?|words?|and|or|to|the|in|into)\b[\s,-]*)+$/i,
  /^[^,;]*(?:\bword pairs|[/ ]sorts?)$/i,
  // Matches "Clap the beats and find the vowel".
  /^(?:use|clap|feel|find|look|listen|show|point|tap|say|sing|send|bring|ask|keep|give|let|take|play|put|make sure) (?:a|an|the|your|their|our|them|him|her|for|at|to|out)\b(?!.*[-:/])/i,
  /^\S+(?: \S+){0,6} (?:mix(?:es)? up|mixes|confuses?|struggles? with|still needs?)\b/i,
  /^mind\b.*\b(?:they (?:hear|say|write|spell)|reversals?|mix(?:ed|ing)?(?:[- ]ups?)?|confus\w+)\b/i,
];

/**
 * Whether a clause only goes over earlier content: "Review of CVC", "revise wk 2-5", "digraph review". "review, then
 * sh" does more.
 */
export function goesOver(text: string): boolean {
  const plain = text.trim();
  return goneOver.some((one) => one.test(plain));
}

/** Verbs for getting something ready. `shows` are verbs for showing or beginning something, which may be teaching. */
const getsReady =
  'set (?:up|out)|(?:get|lay) out|put (?:up|out|away)|(?:hand|pass|give) out|send home|cut (?:out|up)|print|copy|laminate|prepare|prep|gather|collect|order|label|hang(?: up)?|post|display|pack|bring|refill|restock|assign|establish|update|add to|organi[sz]e|make|create|decorate|store|pull|plan|schedule';
const shows = 'start|begin|introduce|model|demonstrate|share|use|launch|play';
/** Things in a classroom, and things that a class agrees on, such as rules and routines. */
const material =
  'boxes|tiles|magnets|counters|walls?|cards?|flash ?cards?|folders?|binders?|books?|notebooks?|whiteboards?|boards?|charts?|posters?|sorts?|rings?|trays?|strips?|mats?|journals?|bins?|bags?|baskets?|kits?|packets?|sheets?|worksheets?|games?|houses?|logs?|lists?|letters? home|(?:parent|magnetic|foam) letters|centers?|centres?|stations?|labels|lines|schedules?|routines?|procedures?|rules|expectations|groups?|partners?|buddies|jobs';
const oneThing = `\\s+(?:[\\p{L}'’-]+\\s+){0,6}?(?:${material})(?:\\s+(?:for|with|before|by|on|in|at|from)\\s+(?:[\\p{L}'’]{3,}\\s*){1,4})?[.!]?$`;
const readying = new RegExp(`^(?:${getsReady})${oneThing}`, 'iu');
const showing = new RegExp(`^(?:${shows})${oneThing}`, 'iu');
const ofTrade =
  /\b(?:vowels?|consonants?|digraphs?|blends?|clusters?|suffix(?:es)?|prefix(?:es)?|silent|magic|syllables?|contractions?|compounds?|plurals?|diphthongs?|schwa|famil(?:y|ies)|alphabet|endings?|patterns?)\b/i;

/**
 * Whether a clause says what the teacher gets ready: "Set up word boxes", "Hang the vowel chart". "Make plurals" does
 * not match.
 */
export function isPreparation(text: string): boolean {
  if (text.length > LONGEST_LEGEND) return false;
  return readying.test(text) || (showing.test(text) && !ofTrade.test(text));
}

/**
 * Whether a text may only say which things are shown, although their names contain taught content: "Introduce silent e
 * sorts".
 */
export function mayPrepare(text: string): boolean {
  return text.length <= LONGEST_LEGEND && showing.test(text);
}

/**
 * Whether a clause begins with the name of a review week: "Review week, catch up on sight words". "Review week, then
 * sh" does not match.
 */
export function isReviewWeek(text: string): boolean {
  return /^(?:review|catch-? ?up|flex|buffer|make-?up|assessment) (?:week|day)s?\b(?!.*(?:[:;(\d]|\b(?:then|new|plus|introduce|teach|begin|start|add|adds)\b)).*$/i.test(
    text.trim(),
  );
}

/** Signs and type styles that a plan may explain. */
const sign =
  '(?:(?:stars?|asterisks?|bold|italics?|(?:square |round |curly |angle )?brackets?|braces|parenthes[ei]s|slashes|slash marks|capitals?|underlin\\w+|highlight\\w*|(?:red|blue|green|yellow|grey|gray|orange|purple|pink)|ticks?|tick marks?|check ?marks?|quotes|quot(?:ation|e) marks|dash(?:es)?|hyphens?|arrows?|dots?)(?: (?:type|print|ink|text|pen|words?|letters?|rows?|cells?|lines?|items?))?)';
const legends = [
  `^(?:an? |the |each |every |all )?(?:words? |letters? |items? |anything |what is |those )?(?:(?:in|with|marked|between|inside) (?:an? |the )?)?${sign}(?: .{0,20}?)?\\s*(?:=|\\b(?:means?|marks?|shows?|stands? for|indicates?|denotes?|tells?|(?:is|are|was|were) (?:for|new|taught|extra|optional|review|sight|tricky|irregular|to be|by|the)))`,
  `\\b(?:go|goes|are|is|shown|written|given|listed|appears?|comes?|put|marked|printed|set) (?:in|between|inside|within|with|by) (?:an? |the )?${sign}\\W*$`,
  '^(?:key|legend|abbreviations?)\\s*[:=–—-]',
  '^\\p{L}{1,5}\\s*=\\s*(?:an? |the )?(?:high[- ]frequency|sight|tricky|irregular|decodable|example|key|nonsense|new|review) (?:words?|sounds?|letters?|only)\\W*$',
].map((source) => new RegExp(source, 'iu'));

/** The most characters of a line that explains signs. */
const LONGEST_LEGEND = 160;

/** Whether a line explains the signs of the plan: "Sounds go between slashes", "A star means a test on Friday". */
export function isLegend(text: string): boolean {
  return text.length <= LONGEST_LEGEND && legends.some((legend) => legend.test(text.trim()));
}

const signature =
  /^[*_("“~–—-]*\s*(?:(?:by|with|from)\s+)?(?:(?:\p{Lu}\.\s?){1,2}(\p{Lu}\p{Ll}+(?:\p{Lu}\p{Ll}+|\p{Ll})(?:[-'’]\p{Lu}?\p{Ll}+)?)|(?:Mrs?|Ms|Miss|Dr)\.?\s+\p{Lu}[\p{L}.'’-]*)(?:\s*,?\s*(?:Gr(?:ade)?\.?|Room|Rm\.?|K|Year|Yr)\s*[\dK–-]*)?[)*_.,"”~]*$/u;

/** Whether a text is only the name of the plan's author: "R. Tsai", "(C. Brannigan)". "B. Open syllables" is not. */
export function isSignature(text: string): boolean {
  if (text.length > LONGEST_LEGEND) return false;
  const found = signature.exec(text.trim());
  if (found === null) return false;
  const name = (found[1] ?? '').toLowerCase();
  return !isTrade([name, `${name}s`]) && !restWords.has(name);
}
