import { names } from '../names.ts';

/** The first page after installing, and the practice page it leads to. */
export const welcome = {
  title: 'Welcome',
  headline: 'Set up your first group',
  lead: 'Wordreach shades the words of a web page that a group cannot decode yet. First it needs to know which patterns the group was taught. This takes about a minute.',
  skip: 'Skip this: show me an example',
  stepSequence: 'What do you teach, in which order?',
  sequenceHint: 'Choose the sequence nearest to your school’s programme. You can change every step later.',
  steps: { one: 'one step', other: '{count} steps' },
  begins: 'first: {what}',
  yours: 'your own',
  school: 'your school’s',
  pasteOwn: 'Paste your own scope and sequence',
  pasteHint: 'It opens in a new tab. Once you save it, you can choose it here.',
  stepGroup: 'Who is reading, and how far are they?',
  groupName: 'Group name',
  groupNameShown: 'Herons',
  taughtThrough: names.lastStepTaught.en,
  whichWords: 'Which of these words can most of the group read?',
  whichHint: 'Choose the last row of which they can read all or nearly all words without help.',
  makingRows: 'Preparing rows of words…',
  noneYet: 'none of these yet',
  orStep: 'Or, if you know it: last step taught',
  chooseStep: 'Choose a step',
  stepMissing: 'First choose the last row of words the group can read, or the last step taught.',
  taughtNow: 'Taught now: {what}',
  stepTry: 'Try it on a story',
  tryHint: 'Your group is saved in this browser. Then a short story opens for practice.',
  keepAndTry: 'Save group and open story',
  nameMissing: 'Give the group a name first.',
  failed: 'The group was not saved: {why}',
  guide: 'How it works',
  guideShade:
    'Open any story or news page and press the Wordreach button in the toolbar. Wordreach shades the words the group cannot decode yet. It does not change the page itself.',
  guidePanel:
    'The side panel shows how much of the text is readable and which patterns are missing. The patterns taught next come first.',
  guideWord:
    'Rest the pointer on a shaded word to see its spellings and sounds, its missing patterns and replacement words.',
  guideDesk: `Press “${names.editText.en}” to adapt the text while Wordreach shades it, then print it. The Lesson page makes the rest of the day’s sheet.`,
  guideDeference:
    'Wordreach estimates which words can be decoded. It does not assess a child. Your school’s programme, its reading specialists and your own judgement come first.',
  practiceTitle: 'Practice page',
  practicePress: 'Now press the Wordreach button in the toolbar.',
  practiceShortcut: 'Or press the keys {shortcut}.',
  practicePin: 'If you do not see the button, open the extensions menu (the puzzle piece) and pin Wordreach.',
  practiceShaded:
    'Well done. Rest the pointer on a shaded word, or go from word to word in the panel. Press the button again to remove the shading.',
  practiceThen: 'It works like this on any web page.',
  practiceGroups: 'Change the group',
} as const;
