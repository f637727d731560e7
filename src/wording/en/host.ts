/** What the background and the storage say: menus, faults, pages that cannot be read. */
export const host = {
  noAnswer: 'Wordreach did not answer. Try it again.',
  dataFailed:
    'The file {file} of the extension could not be read ({why}). Reload the extension on the browser’s extensions page, then press the button again.',
  store:
    'Browsers let no extension into their own store. Open the story in another tab, or paste its text at the desk.',
  browserPage: 'This is a page of the browser itself. Open a story on the web, then press the button.',
  pdf: 'This is a PDF, which the browser shows with a viewer of its own. Copy its text and paste it at the desk.',
  canvas:
    'This page draws its letters as a picture, as some editors do. Copy the text and paste it at the desk.',
  picture: 'This page is mostly a picture, and text in a picture cannot be read. Type it at the desk.',
  localFile:
    'This page is a file on your computer. Open the file at the desk, or allow “access to file URLs” for Wordreach in the browser’s extension settings.',
  readerView: 'Firefox lets no extension into its reader view. Leave the reader view, then press the button.',
  errorPage: 'This page did not load. Load it again, then press the button.',
  emptySelection:
    'There are no words to read in what is selected. Select some text of the page; what is in a field for writing is not read.',
  noWords: 'There are no words to read on this page.',
  laterVersion: 'This file is from a later version of Wordreach. Update the extension, then open it again.',
  cutOff:
    'This file should have {expected} parts but has {found}: it was cut off. Save it again where it came from.',
  shelfCutOff:
    'This file should have {expected} texts but has {found}: it was cut off. Save it again where it came from.',
  notEverything: 'This file does not hold everything. Choose one that was saved from this page.',
  lineOfFile: 'Line {number}',
  passageOfFile: 'Passage {number}',
  textOfFile: 'Text {number}',
  damaged: '{where} of this file is damaged. Save the file again where it came from.',
  damagedNothingTaken:
    '{where} of this file is damaged, so nothing was taken. Save the file again where it came from.',
  noPassages: 'This is no file of passages. Choose one that was saved at the desk.',
  noShelf: 'This is no file of a shelf. Choose one that was saved from this page.',
  tooLarge:
    'This file is larger than 1 MB, which no Wordreach file is. Choose the file that was saved from this page.',
  otherFile: 'This is not a Wordreach file. Choose one that was saved from this page.',
  newerWordreach: 'This file was written by a newer Wordreach. Update the extension, then open it again.',
  unknownPart: 'The file has a part Wordreach does not know (“{part}”). Save it anew where it was made.',
  nothingInFile: 'There is no group and no sequence in this file.',
  noJson:
    'This file is no JSON, or it was cut off. Choose a file that was saved from this page, or save it anew.',
  groupsNoList: 'The groups in this file are not a list. Save it anew where it was made.',
  sequencesNoList: 'The sequences in this file are not a list. Save it anew where it was made.',
  fileUnusable: 'The file cannot be used: {why}',
  repeatedId:
    'Two sequences in this file have the id “{id}”. Give one of them another id, then open it again.',
  otherWindow: '{title} (other window)',
  thisBrowser: '{name} (this browser)',
  passageFull:
    'This was not kept: the browser’s room is full. Save your passages in a file, then delete those you no longer need.',
  passageFailed:
    'This was not kept, because the browser could not store it ({why}). Keep this window open, copy your text, and try again.',
  shelfFull:
    'The shelf could not keep this: the browser’s room is full. Save the shelf in a file, then delete texts you no longer need.',
  shelfFailed:
    'The shelf could not be reached, because the browser could not read or store it ({why}). What was there before is unchanged; please try again.',
  storageFull:
    'This was not kept: the browser’s room for Wordreach is full. Save your groups in a file, then delete sequences you no longer use.',
  storageUnread:
    'Groups, sequences and lessons cannot be read, because the browser refuses it ({why}). Nothing was changed. Close the browser and open it again; passages and the shelf are kept apart from these.',
  storageFailed:
    'This was not kept, because the browser could not store it ({why}). What was there before is unchanged; please try again.',
} as const;
