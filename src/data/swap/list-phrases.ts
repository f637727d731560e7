import type { Synsets } from './read-synsets.ts';

/** Phrases that WordNet does not list, from the small words of English; from memory. */
const MORE = `as well as|as well|at least|at most|in order to|in response to|in addition|in addition to|in terms of|due to|according to|
rather than|such as|so far|so that|as soon as|as long as|as far as|in charge|in charge of|take place|take part|take care|take over|
in common|in honor of|in honour of|in support of|in search of|in favor of|in favour of|in place of|in front of|on behalf of|
of course|for example|for instance|a number of|the rest|each other|one another|no longer|more than|less than|other than|
in other word|other word|at first|at last|at present|in general|in particular|in private|in public|in person|in return|in turn|
on average|by accident|by hand|by chance|on purpose|on time|in time|in effect|in fact|in detail|in advance|in force|under way|
in danger|in trouble|in doubt|in need|in use|in control|out of control|under control|in place|in case|in part|in process|
in question|on duty|on sale|for sale|on display|in sight|out of order|in order|in line|at hand|at risk|at stake|at work|
make sense|make sure|make use|have access|pay attention|lose sight|lose touch|keep track|keep pace|play a role|
interest rate|stock market|real estate|real world|real time|front line|full time|part time|high school|middle school|
fire truck|fire engine|sea lion|sea level|game board|board game|video game|ice cream|living room|waiting room|
climate change|social media|social network|social security|cell phone|mobile phone|web site|web page|home page|
health care|child care|day care|life cycle|food chain|food web|police officer|police department|fire department|
white house|supreme court|attorney general|vice president|prime minister|general election|human being|human right|
because of|each and every|every other|every so often|every now and|every one|at every|know as|know for|up to|used to|have to|able to|going to|supposed to|likely to|out of touch|come clean|speak volume`;

/**
 * Base forms of words that belong together, as the table keeps them: how many, then the words' numbers. From WordNet's
 * entries of two to four words (sea lion, look up) and the small ones above; left out are names and what has a word
 * that the table lacks.
 */
export function listPhrases({ byId }: Synsets, ids: ReadonlyMap<string, number>): number[] {
  const phrases = new Set(MORE.split('|').map((phrase) => phrase.trim()));
  for (const { words } of byId.values()) {
    for (const word of words) if (/^[a-z]+(?: [a-z]+){1,3}$/.test(word)) phrases.add(word);
  }
  return [...phrases].sort().flatMap((phrase) => {
    const words = phrase.split(' ').map((word) => ids.get(word));
    return words.includes(undefined) ? [] : [words.length, ...(words as number[])];
  });
}
