import { names } from '../names.ts';

/** The texts of the side panel. */
export const panel = {
  readingThePage: 'Reading the page…',
  notShaded: 'This page is not shaded.',
  shadeThisPage: 'Shade this page',
  openAStory:
    'Open a story on the web. Then press the Wordreach button in the toolbar. Wordreach reads a page only when you press it.',
  deference:
    'Wordreach estimates which words a group can decode. It does not assess a child. Your school’s programme and your own judgement come first.',
  otherLanguage:
    'This page says it is in {language}. Wordreach reads English only, so its results for other words are not reliable.',
  alsoTaught: names.taughtEarly.en,
  alsoTaughtHint: 'Marked as taught before their step. Untick to undo.',
  openDesk: 'Open the desk',
  takeToDesk: names.editText.en,
  climbAndReport: names.fullReport.en,
  onlyUnderline: 'Underline only',
  privateMarks: 'Private marks: the page cannot see them',
  group: 'Group',
  unreadGroups: {
    one: 'This version of Wordreach cannot read this saved group: {groups}. Update the extension to use it.',
    other:
      'This version of Wordreach cannot read these saved groups: {groups}. Update the extension to use them.',
  },
  groupChanged: 'Another group is in use.',
  editGroups: 'Edit groups',
  stepOf: 'Step {step} of {steps}',
  stepValue: 'Step {step}: {title}',
  stepTeaches: 'What this step teaches',
  whatIf: 'Try another step',
  trial: 'This page is shown at step {step}. {group} stays at step {at}.',
  moveGroup: 'Move {group} to step {step}',
  backToStep: 'Back to step {step}',
  moved: '{group} moved to step {step}.',
  nextSteps: { one: 'Next steps: 1 pattern', other: 'Next steps: {count} patterns' },
  laterSteps: { one: 'Later: 1 pattern', other: 'Later: {count} patterns' },
  notInSequence: { one: 'Not in the sequence: 1 pattern', other: 'Not in the sequence: {count} patterns' },
  textChecked: 'Text checked',
  mainStory: 'Main story',
  wholePage: 'Whole page',
  selection: 'Selection',
  noStory: 'No main story was found, so the whole page is checked. You can also select the text to check.',
  takenAway: `This page keeps removing the shading. Press “${names.editText.en}” to see its text shaded at the desk.`,
  restless: 'Part of this page keeps changing, so that part is not shaded.',
  foreign: 'Not read, because it comes from another site: {frames}. Open it in its own tab to check it.',
  framePdf:
    'Not read, because it is a PDF: {frames}. Open it in a tab of its own, then press the button there.',
  pdf: { one: 'This is a PDF of one page.', other: 'This is a PDF of {count} pages.' },
  pdfPictures: {
    one: 'One page is a picture. Open it here to have it read.',
    other: '{count} pages are pictures. Open it here to have them read.',
  },
  pdfOfPictures: 'Its pages are pictures, not text. Open it here to have them read.',
  pdfForm: 'It is a form. Text in its fields is not read.',
  openPdfHere: 'Open it here',
  openPdfFile: 'Open a PDF file',
  chosenPages: 'Chosen pages',
  frameSealed:
    'Not read, because this page does not let extensions in: {frames}. Copy its text and paste it at the desk.',
  frame: 'a part of the page',
  mostlySkipped:
    'Most of this text is not counted, so no percentage is shown. Select the part to check, or paste it at the desk.',
  canvas:
    'Most of this page is a drawing. Only the words around it are counted. If the drawing has words, read them as a picture.',
  picture:
    'A picture fills most of the screen. Words in the picture are not counted. If it has words, read them as a picture.',
  readScreen: names.readScreen.en,
  scrollOn: 'The picture was taken. For more of the text, scroll this page, then press the button again.',
  screenAdded: 'The screen was added to the picture page. Scroll on, then press the button again.',
  written:
    'Most words on this page are in a field for writing, which is not read. Copy them and paste them at the desk.',
  covered:
    'Part of this text is hidden on the page, but it is counted. To check only what you see, select it.',
  rows: 'This page may show more rows later. The percentage is for the rows shown now.',
  paid: 'This page says that the full text costs money. If only the beginning is here, the percentage is for the beginning.',
  printed: 'The marks print with the page. Press the Wordreach button again to remove them.',
  onShelf: 'Saved to the shelf.',
  textKept: 'The full text is kept on the shelf now.',
  onShelfAlready: 'Already on the shelf.',
  putOnShelf: names.saveToShelf.en,
  withText: names.keepFullText.en,
  help: names.help.en,
  openShelf: 'Open the shelf',
  seeThere: 'Show on shelf',
  theWord: 'The word {word}',
  nextPlace: 'next place',
  close: 'close',
  stillNeeded: `${names.missingPatterns.en}:`,
  neededInShort: `${names.missingPatterns.en}: {patterns}.`,
  sayInstead: `${names.replacementWords.en}, at the desk:`,
  noSwap: 'No readable replacement word was found. Pre-teach this word, or leave it.',
  wordInView: 'Word in view:',
  noTab: 'No web page is open here. Open a story, then press the Wordreach button in the toolbar.',
  silentFrames: {
    one: 'A frame of this page did not answer, so its words are not counted.',
    other: '{count} frames of this page did not answer, so their words are not counted.',
  },
  failed: 'This page could not be checked because of a fault in Wordreach: {why}',
  unjudged: {
    one: 'One word could not be checked because of a fault in Wordreach. It counts as unsure.',
    other: '{count} words could not be checked because of a fault in Wordreach. They count as unsure.',
  },
  unmarked:
    'Some words on this page could not be marked because of a fault in Wordreach. The figures count them all the same.',
  tryAgain: 'Try again',
  copyDetails: 'Copy details',
  detailsCopied:
    'Copied. The details name the words, the browser and the fault. They say nothing about the group.',
  detailsNotCopied: 'The browser did not allow copying. Here are the details:',
  details: 'Details of the fault',
  allRead: 'The group can read every word of this page.',
  others: 'Irregular or unsure',
  othersHint:
    'No pattern makes these words readable. Teach them as by-sight words, replace them, or check them yourself.',
} as const;
