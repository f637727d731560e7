/** The messages of the background script and the storage: menus, errors, and pages that cannot be read. */
export const host = {
  noAnswer: 'Wordreach did not answer. Try again.',
  dataFailed:
    'Wordreach could not read its file {file} ({why}). Reload the extension on the browser’s extensions page, then press the button again.',
  store:
    'Browsers do not let extensions read their own store. Open the story in another tab, or paste its text at the desk.',
  browserPage: 'This is a page of the browser itself. Open a story on the web, then press the button.',
  pdf: 'Wordreach cannot read this PDF in its tab. Save it, then open the file here.',
  canvas: 'This page draws its letters as a picture. Wordreach can read the part you see as a picture.',
  picture: 'This page is mostly a picture. If it shows words, Wordreach can read them.',
  notInFront: 'Switch to the tab with the page, then press the button again.',
  noScreen:
    'The browser does not let Wordreach see this screen. Press the Wordreach button on the page, then try again.',
  noPicture: 'The browser does not let Wordreach have this picture. Save it and open the file at the desk.',
  localFile:
    'This page is a file on your computer. Open the file at the desk, or allow “access to file URLs” for Wordreach in the browser’s extension settings.',
  readerView:
    'Firefox does not let extensions into its reader view. Leave the reader view, then press the button.',
  errorPage: 'This page did not load. Load it again, then press the button.',
  emptySelection:
    'There are no words to read in the selection. Select some text of the page. Text in a field for writing is not read.',
  noWords: 'There are no words to read on this page.',
  laterVersion: 'This file is from a later version of Wordreach. Update the extension, then open it again.',
  cutOff: 'This file is incomplete: it has {found} of {expected} parts. Save it again where it was made.',
  shelfCutOff:
    'This file is incomplete: it has {found} of {expected} texts. Save it again where it was made.',
  notEverything: 'This file does not hold everything. Choose one saved with “Save everything”.',
  lineOfFile: 'Line {number}',
  passageOfFile: 'Passage {number}',
  textOfFile: 'Text {number}',
  damaged: '{where} of this file is damaged. Save the file again where it was made.',
  damagedNothingTaken:
    '{where} of this file is damaged, so nothing was added. Save the file again where it was made.',
  noPassages: 'This file holds no passages. Choose one saved at the desk.',
  noShelf: 'This file holds no shelf. Choose one saved on this page.',
  tooLarge: 'This file is larger than 1 MB, so it is not a Wordreach file. Choose one saved on this page.',
  otherFile: 'This is not a Wordreach file. Choose one saved on this page.',
  newerWordreach: 'This file is from a newer version of Wordreach. Update the extension, then open it again.',
  unknownPart:
    'Wordreach does not know a part of this file (“{part}”). Save the file again where it was made.',
  nothingInFile: 'There is no group and no sequence in this file.',
  noJson: 'This file is damaged or incomplete. Choose a file saved on this page, or save it again.',
  groupsNoList: 'The groups in this file are damaged. Save the file again where it was made.',
  sequencesNoList: 'The sequences in this file are damaged. Save the file again where it was made.',
  fileUnusable: 'The file cannot be used: {why}',
  repeatedId:
    'Two sequences in this file have the same id, “{id}”. Change one of them, then open the file again.',
  otherWindow: '{title} (other window)',
  thisBrowser: '{name} (this browser)',
  passageFull:
    'This was not saved: the browser’s storage is full. Save your passages to a file, then delete some.',
  passageFailed:
    'This was not saved, because the browser could not store it ({why}). Keep this window open, copy your text, and try again.',
  shelfFull:
    'The text was not saved: the browser’s storage is full. Save the shelf to a file, then delete some texts.',
  shelfFailed:
    'The shelf could not be opened, because the browser could not read or store it ({why}). Nothing was changed. Try again.',
  passageUnread:
    'A passage is not shown, because it is damaged or from a later version of Wordreach. It is kept. Update the extension to use it.',
  shelfTextUnread:
    'A text of the shelf is not shown, because it is damaged or from a later version of Wordreach. It is kept. Update the extension to use it.',
  noModel: 'This browser has no language model of its own.',
  modelFull:
    'This sentence is too long for the browser’s language model. Make two sentences of it, then try again.',
  modelLanguage: 'The browser’s language model does not know English. Everything else works without it.',
  modelNotAllowed:
    'The browser does not allow its language model here. Allow it in the browser’s settings, then try again.',
  modelNotDownloaded:
    'The browser could not download its language model. Check the connection and the free disk space, then try again.',
  modelFailed: 'The browser’s language model gave an error ({why}). Your text is unchanged. Try again.',
  storageFull:
    'This was not saved: the browser’s storage for Wordreach is full. Save your groups to a file, then delete sequences you no longer use.',
  storageUnread:
    'Groups, sequences and lessons cannot be read, because the browser refuses it ({why}). Nothing was changed. Close the browser and open it again. Passages and the shelf are stored separately.',
  storageFailed:
    'This was not saved, because the browser could not store it ({why}). Nothing was changed. Try again.',
} as const;
