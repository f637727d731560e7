import { names } from '../names.ts';

/** The texts of the Help page. */
export const help = {
  title: names.help.en,
  contents: 'On this page',
  marks: 'The marks',
  marksLead:
    'Press the Wordreach button on a page. These marks appear. Lines and labels say the same as colours.',
  notCounted: 'Names, numbers and addresses are not counted, and are not marked.',
  word: 'A word, taken apart',
  wordLead:
    'Rest the pointer on a marked word, or press Alt and click any word. The card shows its spellings with their sounds, its base and endings, its missing patterns and replacement words.',
  wordCounts: `“${names.countsAs.en}” sets how a word counts for this group, and sets it back. “${names.markAsTaught.en}” is for one pattern at a time.`,
  figure: 'A good percentage',
  figureLead:
    'The percentage is the share of words that the group can read. 95% is usual for reading with help, 99% for reading alone (E. A. Betts, Foundations of Reading Instruction, 1946). Below 95%, read the text aloud, edit it, or keep it for a later step.',
  terms: 'Terms',
  keys: 'Keys',
  keysLead:
    'These are the keys as your browser has them now. Change them on its page for extension shortcuts.',
  keyButton: 'Shade the page, or remove the shading',
  keyNext: 'Go to the next word that is not yet decodable',
  keyPrevious: 'Go to the word before it',
  keyDesk: 'Open the desk',
  keyCard: 'Open the card of a word',
  keyClose: 'Close the card',
  keyNone: 'not set',
  altClick: 'Alt + click',
  escape: 'Escape',
  settings: 'Groups and settings',
  settingGroup:
    'Another group: in the panel, open the line with the group’s name and choose one, or press “Use this group” on the Groups page.',
  settingStep:
    'The step of a group: in the panel, open the line with the group’s name, or on the Groups page.',
  settingRules: `How words are decoded, such as blends and schwa: “${names.decodingRules.en}” in the same place.`,
  settingLook: 'Underlines without colour: “Underline only”, at the end of the panel.',
  settingPrivate: 'Marks that a page cannot see: “Private marks”, in the same place.',
  settingWords: 'By-sight words, names and ignored words of a group: on the Groups page.',
  settingSequence: 'The steps and their order: “Sequences” on the Groups page. You can paste your own.',
  settingKeep: `“${names.keepFullText.en}”: the shelf keeps the text itself, so that you can edit it later. Without it, the shelf keeps its list of words only.`,
  cannot: 'Text that Wordreach cannot read',
  cannotPdf:
    'A PDF with a password, of more than 300 pages or larger than 25 MB. In Firefox, any PDF in a tab: save it, then open the file.',
  cannotDrawn: `Text that is drawn: open a picture of it at the desk, choose “Read this picture” in the menu of a picture, or press “${names.readScreen.en}” in the panel. Handwriting, slanted photos and very small type are not read well, so check the words in dashed boxes.`,
  cannotFrame: 'A part from another site: open that part in a tab of its own.',
  cannotField: 'Text in a field for writing: copy it and paste it at the desk.',
  cannotBrowser: 'Pages of the browser and its store: the browser lets no extension in.',
  cannotLanguage: 'Other languages: Wordreach reads English only.',
  trouble: 'If something is wrong',
  troubleButton: 'You do not see the button: open the extensions menu (the puzzle piece) and pin Wordreach.',
  troubleShare:
    'The percentage looks wrong: see which text is checked (main story, whole page or selection) and read the note above the percentage, if there is one.',
  troubleWord: `A word is judged wrongly: set what it counts as on its card. “Unsure” words need your own eye.`,
  troubleStuck: 'Nothing happens: load the page again, then press the button again.',
  troubleDetails:
    'You report a fault: these details name the version and the browser. They say nothing about your groups.',
  copy: 'Copy details',
  copied: 'Copied.',
  notCopied: 'The browser did not allow copying. Here are the details:',
  firstSteps: 'First steps, with pictures',
  practice: 'Practise on a story',
  privacy: 'Privacy',
  deference:
    'Wordreach estimates which words can be decoded. It does not assess a child. Your school’s programme, its reading specialists and your own judgement come first.',
} as const;
