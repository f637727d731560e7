import { describe, expect, test } from 'vitest';
import { addSuffix } from './add-suffix.ts';
import { restoreStem } from './restore-stem.ts';

// Source for the rules of -s, -ed, -ing, -er, -est, -y, -ly, -ness, -ful, -less: England's national curriculum 2013,
// English Appendix 1: Spelling (from memory), years 1 to 4. The other rules are common practice, no source.
const TABLE = `
cat s cats none
bus s buses none
mix s mixes none
lunch s lunches none
dish s dishes none
horse s horses none
cry s cries y-to-i
play s plays none
buy s buys none
hope ing hoping drop-e
hop ing hopping double
hop ed hopped double
help ed helped none
boat ing boating none
mix ing mixing none
snow ing snowing none
play ed played none
cry ed cried y-to-i
cry ing crying none
see ing seeing none
dye ing dyeing none
canoe ing canoeing none
die ing dying drop-e
quit er quitter double
begin ing beginning double
open ing opening none
nice est nicest drop-e
happy er happier y-to-i
sun y sunny double
shine y shiny drop-e
happy ness happiness y-to-i
plenty ful plentiful y-to-i
mercy less merciless y-to-i
dry ness dryness none
baby ish babyish none
hope ful hopeful none
change able changeable none
change ing changing drop-e
courage ous courageous none
gentle ly gently drop-e
safe ly safely none
true ly truly drop-e
full ly fully none
basic ly basically none
public ly publicly none
panic ing panicking none
robot ic robotic none
`
  .trim()
  .split('\n')
  .map((line) => line.split(' ') as [string, string, string, string]);

describe('addSuffix and restoreStem', () => {
  test.each(TABLE)('%s + %s is spelt %s', (base, suffix, spelling, change) => {
    const stressedLast = base === 'begin' ? true : undefined;
    expect(addSuffix(base, suffix, stressedLast)).toMatchObject({ spelling, change });
  });

  test.each(TABLE)('%s + %s is among the stems of %s', (base, suffix, spelling, change) => {
    const { affix } = addSuffix(base, suffix, base === 'begin' ? true : undefined);
    expect(restoreStem(spelling, affix)).toContainEqual({ stem: base, change });
  });
});

test('addSuffix returns the suffix as it is spelt in the word', () => {
  expect(addSuffix('bus', 's').affix).toBe('es');
  expect(addSuffix('basic', 'ly')).toEqual({ spelling: 'basically', affix: 'ally', change: 'none' });
});
