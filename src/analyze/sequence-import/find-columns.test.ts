import { expect, test } from 'vitest';
import { columnOf, columnRules, findColumns, ruleFor } from './find-columns.ts';
import { findRows } from './find-rows.ts';

function kindsOf(pasted: string): readonly string[] {
  return findColumns(findRows(pasted)!).columns.map(({ kind }) => kind);
}

test.each([
  [
    'a focus column titles the steps, and the finest number stays beside it',
    'Unit\tWeek\tFocus\tSpellings\tExamples\tSight words\n1\t1\tShort a\tm, s\tam\tthe\n1\t2\tFinal blends\tnd\thand\tof',
    'notes step title patterns examples by-sight',
  ],
  [
    'weeks that begin anew in each unit need the unit',
    'Unit\tWeek\tSkill\n1\t1\tShort a\n1\t2\tShort i\n2\t1\tVowel teams',
    'step step title',
  ],
  ['letters alone title nothing', 'Week\tPhonics\n1\tm, s\n2\tsh, ch', 'step patterns'],
  [
    'a title beside letters only names',
    'No\tTitle\tLetters taught\n1\tTwo make one\tsh\n2\tFirst part\tst',
    'step step patterns',
  ],
  [
    'lessons named by what they teach',
    'Lesson\tExamples\nInitial blends\tstop\nVowel teams\train',
    'title examples',
  ],
  [
    'common words under "Words"',
    'Week\tPhonics\tWords\n1\tsh\tthe, of\n2\tch\twas, to',
    'step patterns by-sight',
  ],
  [
    'words under "Words" that show what is taught',
    'Week\tPhonics\tWords\n1\tsh\tship, shop\n2\tch\tchin, chop',
    'step patterns examples',
  ],
  ['no head', '1\tsh\tship shop\tthe, of\n2\tch\tchin chop\twas, to', 'step patterns examples by-sight'],
  [
    'a column of its own kind is a note',
    'Week\tPhonics\tTeacher\n1\tsh\tMr Falk\n2\tch\tWilma',
    'step patterns notes',
  ],
])('the columns are of the kinds %s', (_, pasted, kinds) => {
  expect(kindsOf(pasted).join(' ')).toBe(kinds);
});

test.each(columnRules)('the rule “$name” applies to $example, not to $counterExample', (rule) => {
  const letters = columnOf(rule.beside, 2, ['sh', 'ch']);
  const said = ([name, cell]: readonly [string, string]) => {
    const column = columnOf(name, 0, [cell]);
    return ruleFor(column, [column, letters]).name;
  };
  expect(said(rule.example)).toBe(rule.name);
  expect(said(rule.counterExample)).not.toBe(rule.name);
});

/** Names that teachers give to a second column of taught content (common practice, no source). */
const seconds =
  "Also This Week|Word Study|Word Parts|Spelling Focus|New Concept|Second Skill|Syllables|Morphology|Other|Plus|Endings|New Patterns|Encoding|Spelling Rule|What's New|Secondary focus|Mini Lesson|Small group|Weekly focus|Lesson focus|Unit focus|Rule of the Week|Introduced|New this week|Affixes|Word Analysis|Long words|Multisyllabic|Skill 2|Part 2|Also|Syllables / Longer Words|Mid-week|Day 3-5|Sub-skill|Reading and Spelling|Additional Skill|Details|Step 2|Unit skill|Week's new sounds|Taught Wed|Extra|Extras|Teacher Focus|Teacher-led|Review and New|Resources|Activity|Links|Interventionist".split(
    '|',
  );

test.each([
  'Plural -s; -es; suffix -ing; -ed',
  'ai, ay; oa; ee, ea; igh',
  'Closed syllables; VC/CV; Prefix un-; y',
])('a second column that teaches %s is not passed over, whatever its name', (taught) => {
  const cells = taught.split('; ');
  const skills = ['Short a', 'Digraph sh', 'Silent e', 'Soft c'];
  const others = seconds.filter((name) => {
    const rows = skills.map((skill, i) => `${i + 1}\t${skill}\t${cells[i]}\tthe, of\tpartners`);
    const kind = kindsOf([`Wk\tSkill\t${name}\tSight words\tNotes`, ...rows].join('\n'))[2]!;
    return kind !== 'patterns' && kind !== 'title';
  });
  expect(others).toEqual([]);
});

/** What teachers call columns of what was taught before, of words and of remarks. Common practice, no source. */
const asides =
  'Review|Review (from K)|Spiral review|Notes|Teacher notes|Comments|Dictation|Homework|Assessment|Quiz|Decodable text|Grammar|Handwriting'.split(
    '|',
  );

test.each(asides)('a column named %s teaches nothing, whatever its cells name', (name) => {
  const rows = ['Short a', 'Digraph sh', 'Silent e', 'Soft c'].map(
    (skill, i) => `${i + 1}\t${skill}\t${['Plural -s', 'ai, ay', 'Closed syllables', 'y'][i]}`,
  );
  expect(kindsOf([`Wk\tSkill\t${name}`, ...rows].join('\n'))[2]).toBe('notes');
});
