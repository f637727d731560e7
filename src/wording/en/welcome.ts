/** The first page after installing, and the practice page it leads to. */
export const welcome = {
  title: 'Welcome',
  headline: 'Three short steps, then your first page',
  lead: 'Wordreach shades the words of a web page that a group cannot decode yet. For that it has to know what the group was taught.',
  skip: 'Skip this and look round with the two groups that come along',
  stepSequence: 'What do you teach, and in which order?',
  sequenceHint: 'Take the one that is nearest to your school’s programme; every step can be adapted later.',
  steps: { one: 'one step', other: '{count} steps' },
  begins: 'begins with {what}',
  yours: 'your own',
  school: 'your school’s',
  pasteOwn: 'Paste your own scope and sequence',
  pasteHint: 'It opens beside this page, and stands here once you have kept it.',
  stepGroup: 'Who is reading, and how far are they?',
  groupName: 'Name of the group',
  groupNameShown: 'Herons',
  taughtThrough: 'Taught through',
  taughtNow: 'Taught now: {what}',
  stepTry: 'Try it on a story',
  tryHint: 'Your group is kept in this browser, and a short story opens to practise on.',
  keepAndTry: 'Keep the group and open the story',
  nameMissing: 'Give the group a name first.',
  failed: 'The group was not kept: {why}',
  guide: 'In two minutes',
  guideShade:
    'Open any story or news page and press the Wordreach button in the toolbar. Words the group cannot decode yet are shaded; the page itself is not changed.',
  guidePanel:
    'The panel beside it says how much the group can read, and which patterns are missing, those first that open most of the page.',
  guideWord:
    'Rest the pointer on a shaded word: its spellings and sounds, what is still needed, and a word to say instead.',
  guideDesk:
    'Take the text to the desk, adapt it while the shading follows, and print it. The lesson page makes the rest of the day’s sheet from what was taught.',
  guideDeference:
    'Wordreach estimates; it does not assess a child. Your school’s programme, its reading specialists and your own judgement come first.',
  practiceTitle: 'Practice page',
  practicePress: 'Now press the Wordreach button in the toolbar.',
  practiceShortcut: 'Or press the keys {shortcut}.',
  practicePin:
    'If the button is not there, open the menu of extensions (the puzzle piece) and pin Wordreach.',
  practiceShaded:
    'There it is. Rest the pointer on a shaded word, or go from one to the next in the panel. A second press takes all of it away.',
  practiceThen: 'It works like this on any page of the web.',
  practiceGroups: 'Change the group',
} as const;
