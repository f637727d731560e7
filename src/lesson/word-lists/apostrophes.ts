/** Short forms pupils meet first, commonest first (from memory). */
export const shortForms: readonly string[] = (
  "it's don't I'm that's you're can't I'll didn't he's we're let's I've there's what's isn't she's they're won't " +
  "we'll you'll doesn't wasn't couldn't haven't wouldn't you've aren't hasn't who's we've she'll he'll they'll I'd " +
  "shouldn't weren't hadn't they've you'd where's"
).split(' ');

/** Owners that are often named in stories for children: our own list. */
export const owners: readonly string[] = (
  "man's dad's mum's dog's cat's king's hen's pig's fox's ship's boat's queen's boy's girl's sister's brother's " +
  "baby's teacher's farmer's sailor's captain's crab's gull's town's"
).split(' ');
