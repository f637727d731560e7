import { cutStory, type StoryBlock } from './story-blocks.ts';
import { AGENCY, CREDIT, leaveOutPieces } from './trim-pieces.ts';
import { workInSlices } from './work-in-slices.ts';

/**
 * A rule for blocks that look like a part of a story but are none. The rules are common practice of news pages, no
 * source, unless one is named.
 */
interface TrimRule {
  readonly name: string;
  readonly example: string;
  /** A block that the rule must keep. */
  readonly counterExample: string;
  applies(block: StoryBlock, story: WholeStory): boolean;
}

/** The facts about the whole story by which a block is judged. */
interface WholeStory {
  readonly blocks: readonly StoryBlock[];
  /** The index of the block. */
  readonly at: number;
  /** The author of the story, as the page names it. */
  readonly byline: string | null;
}

const MONTH =
  '(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)';
/** Matches every piece of a line with the time of a story. */
const TIME = new RegExp(
  [
    `\\b${MONTH}\\b\\.?`,
    '\\b(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?\\b\\.?',
    '\\b(?:first|originally|last)\\b',
    '\\b(?:published|updated|posted|modified|added|created|date|today|yesterday|on|at|by|of|and|min(?:ute)?s?|h(?:ou)?rs?|days?|weeks?|months?|years?|ago|read(?:ing)?|time|a\\.?m|p\\.?m|noon|midnight|[ecmp][sd]?t|gmt|utc|bst|ist|cet)\\b\\.?',
    '\\d+(?:st|nd|rd|th)?',
    '[\\s.,:;|/·•–—()+-]',
  ].join('|'),
  'gi',
);
const TIME_AFTER = new RegExp(
  `[\\s,|·•–—-]*(?:on |at )?(?:${MONTH}\\b|\\b(?:mon|tue|wed|thu|fri|sat|sun)\\p{L}*|\\d|updated|published|posted).*$`,
  'iu',
);
const LABEL =
  /^(?:adverts?|advertise?ments?|ads?|tell us what you think|(?:\d+ )?(?:comments?|shares?|likes?|views?)|share|share (?:this|on)( \p{L}+){0,3}|tweet|email|print|save|captions?|close|credits?|images?|photos?|video|gallery|(?:see |read )?(?:related|more|also)(?: (?:news|stories|story|articles?|posts?|topics|content|links|coverage|reading|video))*|more (?:from|on|about|in)\b.{0,40}|(?:latest|breaking|top|recent|popular|more)(?: \p{L}+)? (?:news|stories|articles|posts|headlines)|most (?:read|popular|viewed)|(?:article |story )?(?:continues?|continue reading|keep reading) ?(?:below|after.{0,30})?|don['’]t miss|(?:you )?(?:may|might)(?: also)? (?:also )?(?:like|be interested in)|what (?:to read|['’]s) next|next|previous|read (?:more|next|on)|see also|see more|sponsored(?: content)?|promoted|trending(?: now)?|recommended(?: for you| reading| stories)?|up next|now playing(?:: .{0,60})?|play(?: video)?|loading(?: more)?(?: \p{L}+)?|follow us|sign up|subscribe|log ?in|sign in|join the (?:conversation|discussion)|leave a (?:comment|reply)|tags|topics|filed under|skip to .{0,40}|back to top|show (?:more|less|all)|view (?:all|gallery|comments)|(?:image|photo|slide) \d+ of(?: ?\/)? ?\d+|\d+ ?\/ ?\d+|\[?edit\]?)\W*$/iu;
/** Matches the beginning of a line that leads elsewhere. */
const LEADS =
  /^\W*(?:related|see (?:also|more)|see:|also (?:read|see|on)|read (?:more|also|next|the (?:full|original))|read:|also:|more:|more (?:from|on|about)|watch(?: (?:more|now|the video|below))?:|listen:|click here|don['’]t miss|you may also|recommended|next:|up next|go to|view (?:gallery|photos))\b|^\W*(?:watch|related|read|also|more|next|listen|see also|see more|read more) ?[:|]/i;
const ASKS =
  /^\W*(?:click|tap|sign up|subscribe|follow|get|join|download|e-?mail|contact|reach|tell us|like us|send|have (?:a|you)|got a|want|enjoy|love|looking|stay|keep up|don['’]t miss|never miss|support|donate|become|help us|if you (?:have|want|like|enjoy|see|would)|to (?:get|receive|subscribe|report|contact)|for more|please|this (?:post|newsletter|(?:story|article) (?:contains|may))|we (?:may|welcome)|share|tune|visit|check out|thank you)\b/i;
/** Matches a sign-up request after a first sentence: “There is more where that came from. Sign up today.” */
const SIGNS_UP = /[.!?] (?:sign up|subscribe|follow|click|download|join) /i;
const MEANS =
  /newsletter|subscri|\b(?:on|via) (?:twitter|facebook)|facebook page|instagram|youtube|pinterest|linkedin|\b(?:our|the|news) apps?\b|\binbox\b|\bour (?:\p{L}+ )?e-?mails?\b|a month\b|free trial|(?:read|unlock) (?:this|the full|every)\b|\bour podcast|e-?mail (?:us|me|him|her|them|address|alerts)|\w@\w|(?:^|\s)@\w|click(?:ing)? here|forums\b|sign(?:ing)? up|\balerts\b|cookies|privacy policy|affiliate|hashtag|(?:^|\s)#\w/iu;
const NOT_OURS =
  /^printed from\b|^\W*(?:©|copyright\b|\(c\)|all rights reserved)|all rights reserved|may not be (?:published|reproduced)|(?:^|\. )(?:this|the) (?:story|article|post|piece|content|essay) (?:was|has been|is|originally|first|appears|appeared)\b.{0,60}\b(?:published|appeared|posted|updated|corrected|produced|provided|part of)|^originally (?:published|appeared|posted)|contributed (?:to (?:this|the) (?:report|story|article|piece|post)|reporting)|contributed\.$|\blicen[sc]ed under\b|^\W*(?:additional )?(?:reporting|writing|editing|edited|compiled|translated|photographs?|photography|photos?|story|words|text|video|research|production|graphics?|illustrations?) by\b|^the associated press\b.{0,60}$/i;
const BIOGRAPHY =
  /\b(?:is|was|has been|are) (?:an?|the|our|currently)\b.{0,80}\b(?:writer|reporter|editor|journalist|author|correspondent|columnist|contributor|producer|blogger|freelancer?|professor|staff|founder|director|analyst|photographer|critic)|\b(?:writes|covers|reports|blogs|tweets|covered|joined)\b.{0,60}\b(?:for|on|about|from|at)\b/i;
/**
 * Matches names. Each name begins with a capital, also in the middle of the line. The flag `i` would remove this
 * condition.
 */
const NAMES =
  "(?:\\p{Lu}[\\p{L}.'’-]*|(?:and|for|of|the|de|van|von|der|in|special to|with|staff|writer|correspondent|reporter|editor)\\b)";
const BYLINE = new RegExp(
  `^(?:(?:[Ww]ritten |[Pp]osted |[Pp]ublished |[Ww]ords |[Ss]tory |[Tt]ext |[Aa]rticle |[Rr]eviewed )?(?:[Bb]y|BY)|[Aa]uthor)[:\\s]+(?:${NAMES}[\\s,&|/·•–—-]*){1,14}[.:]?$`,
  'u',
);
/** Common class names and ids, schema.org names and ARIA roles for parts that are not the story, by their purpose. */
const PARTS = words(
  'newsletter newsletters signup subscribe subscription subscriptions related recirc recirculation promo promos promotion promoted advert adverts advertisement advertising sponsor sponsored sponsors recommended recommendation recommendations trending popular upsell paywall donate donation cta readmore breadcrumb breadcrumbs comments disclaimer navigation nav menu menubar pagination pager complementary contentinfo search toolbar cookie consent banner alert disclosure teaser teasers morefrom infobox navbox toc hatnote',
);
const WHO = words(
  'byline bylines author authors bio biography contributor contributors writer reporter creator publisher',
);
const MARKS = words(
  'dateline timestamp date datetime dates pubdate published updated time meta metadata readtime eyebrow kicker label category categories tags tag topics topic keywords share sharing social shares follow credit credits photographer copyright attribution source courtesy counter count tools buttons button rubric overline',
);

/** The rules, in the order in which they are applied. */
export const TRIM_RULES: readonly TrimRule[] = [
  {
    name: 'over the headline',
    example: 'Harbour news (over the headline)',
    counterExample: 'a long first paragraph over its headline',
    applies: ({ place, words }) => place === 'above' && words < 30,
  },
  {
    name: 'part for finding the way',
    example: 'an entry of a nav, a menu, a breadcrumb, a footer',
    counterExample: 'a list of what is to be packed; a heading that is a button',
    applies: ({ tags, isHeading }) =>
      ['NAV', 'FOOTER', 'FORM', 'DIALOG', 'MENU'].some((tag) => tags.has(tag)) ||
      (tags.has('BUTTON') && !isHeading),
  },
  {
    name: 'label',
    example: 'Advertisement; Image 1 of 4; 12 shares',
    counterExample: 'Nets and ropes',
    applies: ({ says }) => LABEL.test(says),
  },
  {
    name: 'line of links',
    example: '“Ferry late again, harbour master says” as nothing but a link',
    counterExample: 'a sentence with a link in it; a heading that is a link; entries after “The crew took:”',
    applies: (block, { blocks, at }) => {
      const { linked, says, isHeading, place, tags } = block;
      if (linked < 0.75 || (linked < 0.9 && /[.!?]['"’”)]*$/.test(says))) return false;
      if (isHeading) return LEADS.test(says) || place === 'below' || tags.has('LI');
      return !tags.has('LI') || !isTold(blocks, at);
    },
  },
  {
    name: 'lead elsewhere',
    example: 'Related: Nets dry at last',
    counterExample: 'Related to the gull, the tern fishes too.',
    applies: ({ says, words, linked, line }) =>
      words <= 30 &&
      LEADS.test(says) &&
      (linked > 0.3 || !/[.!?]$/.test(says) || /^\W*\S+:/.test(says) || line.tagName === 'LI'),
  },
  {
    name: 'time of the story',
    example: 'Updated 20 November 2026, 1:35 p.m.; 5 min read',
    counterExample: 'On May 12 the ferry sailed.',
    applies: ({ says, isHeading }) => !isHeading && /\d/.test(says) && countLeft(says) === 0,
  },
  {
    name: 'byline',
    example: 'By Wilma Falk; By Wilma Falk, 20 November 2026',
    counterExample: 'By noon the ferry had gone.',
    applies: ({ says, words, isHeading }) =>
      !isHeading && words <= 20 && (BYLINE.test(says) || BYLINE.test(says.replace(TIME_AFTER, ''))),
  },
  {
    name: 'writer or time under the headline',
    example: 'Wilma Falk; The Quay Post, 20 November 2026',
    counterExample: 'The Marigold came back on 20 November after nine days.',
    applies: ({ place, says, words, isHeading, tags }) =>
      place === 'under' &&
      !isHeading &&
      !['FIGCAPTION', 'CAPTION', 'LI', 'TH', 'TD', 'DD'].some((tag) => tags.has(tag)) &&
      !/\p{Ll}{3}[.!?:,;]['"’”)]*$/u.test(says) &&
      (words <= 5 || (words <= 14 && /\d/.test(says) && new RegExp(`\\b${MONTH}\\b`, 'i').test(says))),
  },
  {
    name: 'credit',
    example: 'Photo: Bram Falk',
    counterExample: 'The picture shows the ferry at rest.',
    applies: ({ says, words, tags }) =>
      words <= 14 &&
      (CREDIT.test(says) ||
        (AGENCY.test(says) && ['FIGURE', 'FIGCAPTION', 'CITE'].some((tag) => tags.has(tag)))),
  },
  {
    name: 'part named as no story',
    example: 'a box with the class newsletter-signup',
    counterExample: 'a paragraph of half the story in a box called promo',
    applies: ({ names, words }) =>
      meets(names, PARTS) || (words <= 15 && (names.has('ad') || names.has('ads'))),
  },
  {
    name: 'part named after the writer',
    example: 'a box with the class author-bio at the end',
    counterExample: 'a paragraph of the story with the class by-author',
    applies: ({ names, place, words }, { blocks, at }) =>
      meets(names, WHO) && (place !== 'within' || words <= 16 || !goesOn(blocks, at)),
  },
  {
    name: 'line named as a mark',
    example: 'a line of few words with the class timestamp, kicker or credit',
    counterExample: 'a paragraph with the class meta',
    applies: ({ marks, words, isHeading }) => !isHeading && words <= 10 && meets(marks, MARKS),
  },
  {
    name: 'invitation',
    example: 'Sign up for our newsletter today.',
    counterExample: 'Follow us down to the quay, she said.',
    applies: ({ says, words, linked, isHeading }) =>
      words <= (isHeading ? 12 : 70) &&
      ((ASKS.test(says) && (MEANS.test(says) || (linked > 0.3 && words <= 20 && !isHeading))) ||
        (words <= 40 && SIGNS_UP.test(says) && MEANS.test(says))),
  },
  {
    name: 'word about the text itself',
    example: 'This story was first published in The Quay Post. Wilma Falk contributed to this report.',
    counterExample: 'The story was told on the quay for years.',
    applies: ({ says, words, place }) =>
      words <= 70 && (place !== 'within' || words <= 30) && NOT_OURS.test(says),
  },
  {
    name: 'biography',
    example: 'Wilma Falk is a reporter who covers the sea. (after the last paragraph)',
    counterExample: 'Ines is a writer now, and she lives by the sea. (the end of the story)',
    applies: (block, { blocks, at, byline }) =>
      block.words <= 80 &&
      at >= blocks.length - 4 &&
      BIOGRAPHY.test(block.says) &&
      (isSlanted(block) || MEANS.test(block.says) || isAbout(block, byline)),
  },
];

/**
 * Returns the texts that belong to a story, in page order, without parts that only look like it. `headline` has the
 * texts of the heading, which stays. `byline` names the author. The page can run meanwhile.
 */
export async function trimStory(
  texts: readonly Text[],
  headline: ReadonlySet<Text>,
  byline: string | null,
): Promise<Text[]> {
  const blocks = await cutStory(texts, headline);
  const kept: Text[] = [];
  await workInSlices(blocks.entries(), ([at, block]) => {
    if (block.isHeadline || !TRIM_RULES.some((rule) => rule.applies(block, { blocks, at, byline })))
      kept.push(...leaveOutPieces(block));
  });
  return kept;
}

/** Returns whether a block is followed by a paragraph that is not about the writer. */
function goesOn(blocks: readonly StoryBlock[], at: number): boolean {
  return blocks
    .slice(at + 1)
    .some(
      ({ place, names, words }) =>
        place === 'within' && words >= 15 && !meets(names, WHO) && !meets(names, PARTS),
    );
}

/** Returns whether a sentence with a colon introduces the list of an entry. “The crew took:” does, “Related:” does not. */
function isTold(blocks: readonly StoryBlock[], at: number): boolean {
  while (at > 0 && blocks[at]!.tags.has('LI')) at--;
  const { says, words } = blocks[at]!;
  return words >= 3 && says.endsWith(':') && !LABEL.test(says) && !LEADS.test(says);
}

function isSlanted({ texts }: StoryBlock): boolean {
  return texts.every(
    ({ data, parentElement }) => !/\S/.test(data) || parentElement?.closest('em, i') != null,
  );
}

function isAbout({ says }: StoryBlock, byline: string | null): boolean {
  const [name] = /\p{Lu}[\p{L}'’-]+ \p{Lu}[\p{L}'’-]+/u.exec(byline ?? '') ?? [];
  return name !== undefined && says.startsWith(name);
}

/** Returns the number of letters in a line, not counting the letters of a time. */
function countLeft(says: string): number {
  return says.replace(TIME, '').length;
}

function meets(one: ReadonlySet<string>, other: ReadonlySet<string>): boolean {
  for (const each of one) if (other.has(each)) return true;
  return false;
}

function words(list: string): ReadonlySet<string> {
  return new Set(list.split(' '));
}
