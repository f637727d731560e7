/** The side panel. */
export const panel = {
  readingThePage: 'Reading the page…',
  notShaded: 'This page is not shaded.',
  shadeThisPage: 'Shade this page',
  openAStory:
    'Open a story on the web, then press the Wordreach button in the toolbar: it may read a page only when you do.',
  deference:
    'Wordreach estimates what can be decoded; it does not assess a child. Your school’s programme and your own judgement come first.',
  otherLanguage:
    'This page says that it is in {language}. Wordreach reads English: what it says of other words is chance.',
  alsoTaught: 'Also taught',
  alsoTaughtHint: 'Ticked as taught before their step; untick to take back.',
  openDesk: 'Open the desk',
  takeToDesk: 'Take to the desk',
  climbAndReport: 'Climb and report',
  onlyUnderline: 'only underline words on the page',
  group: 'Group',
  unreadGroups: {
    one: 'Kept, but not readable by this version of Wordreach: {groups}. Update the extension to use it.',
    other: 'Kept, but not readable by this version of Wordreach: {groups}. Update the extension to use them.',
  },
  editGroups: 'Edit groups',
  stepOf: 'Step {step} of {steps}',
  stepValue: 'Step {step}: {title}',
  stepTeaches: 'What this step teaches',
  textChecked: 'Text that is checked',
  mainStory: 'Main story',
  wholePage: 'Whole page',
  selection: 'Selection',
  noStory:
    'No main story of some length was found, so the whole page is checked. You can also select the text.',
  takenAway:
    'This page keeps taking the shading away. Take its text to the desk, where it is shaded all the same.',
  restless: 'A part of this page keeps changing by itself; that part is not shaded.',
  foreign: 'Not read, because it comes from another site: {frames}. Open it in a tab of its own to check it.',
  framePdf: 'Not read, because it is a PDF: {frames}. Copy its text and paste it at the desk.',
  frameSealed:
    'Not read, because this page closes it off from extensions: {frames}. Copy its text and paste it at the desk.',
  frame: 'a part of the page',
  mostlySkipped:
    'More of this text is left out than counted, so no percentage is shown. Select the part to check, or paste it at the desk.',
  canvas:
    'Most of this page is one drawing, and only the words around it are counted. If the drawing has letters, copy its text and paste it at the desk.',
  picture: 'A picture fills most of the view. If it has words, they are not counted: type them at the desk.',
  written:
    'Most words of this page are in a field for writing, which is not read. Copy them and paste them at the desk.',
  covered:
    'Part of this text is cut off or covered on the page. The figure counts it too; select the part that you see to check only that.',
  rows: 'This page may have more rows than it shows at once. The figure is of the rows that are there now.',
  paid: 'This page says that reading all of it costs money. If only its beginning is here, the figure is of the beginning.',
  printed: 'The marks are printed with the page. Press the Wordreach button again to take them away.',
  onShelf: 'It is on the shelf.',
  onShelfAlready: 'It is on the shelf already.',
  putOnShelf: 'Put on the shelf',
  withText: 'with its text',
  openShelf: 'Open the shelf',
  seeThere: 'See it there',
  theWord: 'The word {word}',
  nextPlace: 'next place',
  close: 'close',
  stillNeeded: 'still needed:',
  neededInShort: 'Still needed: {patterns}.',
  sayInstead: 'a word to say instead, at the desk:',
  noSwap: 'No swap says the same and can be read: teach it as a story word, or leave it.',
  noTab: 'There is no page in front. Open a story, then press the Wordreach button in the toolbar.',
  silentFrames: {
    one: 'A frame of this page did not answer, so its words are not counted.',
    other: '{count} frames of this page did not answer, so their words are not counted.',
  },
  failed: 'This page could not be checked, because something in Wordreach failed: {why}',
  unjudged: {
    one: 'One word could not be judged, because something in Wordreach failed; it counts as unsure.',
    other: '{count} words could not be judged, because something in Wordreach failed; they count as unsure.',
  },
  unmarked:
    'Some words of this page could not be marked, because something in Wordreach failed. The figures are of all its words.',
  tryAgain: 'Try again',
  copyDetails: 'Copy details',
  detailsCopied: 'Copied. They name the words, the browser and the fault, and nothing of the group.',
  detailsNotCopied: 'The browser did not let them be copied. Here they are:',
  details: 'Details of the fault',
  allRead: 'The group can read every word of this page.',
  others: 'Irregular or unsure',
  othersHint: 'Words no pattern opens: teach them by sight, swap them, or look at them yourself.',
} as const;
