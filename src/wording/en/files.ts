/** Texts about opening a teacher's files: why a file cannot be opened, what was left out, and which chapters are taken. */
export const files = {
  empty: 'This file is empty. Choose another.',
  tooLarge: 'This file is larger than 25 MB. Copy the part you want and paste it.',
  unreadable: 'The browser cannot read this file. Check that it is still in its folder, and choose it again.',
  unknownMake: 'This file is damaged, or Wordreach does not know its format. Copy its text and paste it.',
  noText: 'This file is not a text. Open it in the program that made it, then copy and paste its text.',
  noWords: 'There are no words in this file. Choose another.',
  packed: 'This is a compressed file. Unpack it, then open the file inside.',
  lockedOrOldDocument:
    'This document has a password, or comes from an old version of Word. Open it in Word and save it as .docx without a password.',
  richText: 'This is a rich text file. Open it in Word and save it as .docx.',
  misnamed:
    'This file is named .{ending}, but it is another kind of file or damaged. Get it again, or copy its text and paste it.',
  otherKind:
    'Wordreach opens text, web pages, Word documents, PDF, EPUB and pictures. For other files, copy the text and paste it.',
  noWordsInPage: 'There are no words in this web page. Open it in the browser, then copy and paste its text.',
  notFromWord: 'This is not a document that Word wrote. Copy its text and paste it.',
  damagedDocument: 'This Word document is damaged. Open it in Word, save it again, and open the new file.',
  noWordsInDocument: 'There are no words in this document. If its text is a picture, type the part you want.',
  damagedBook: 'This book is damaged. Get a new copy and open that.',
  lockedBook: 'This book is locked by its seller and opens only in their app. Type the part you want.',
  noWordsInBook: 'There are no words in this book. Choose another.',
  tooSlow: 'This file takes too long to read. Copy the part you want and paste it.',
  slowPdf: 'This PDF takes too long to read. Copy its text and paste it.',
  longPdf:
    'This PDF has {pages} pages, which is too many. Save the pages you want as a new PDF and open that.',
  pdfOfPictures:
    'This PDF holds pictures of pages, not text. Open it on the page for PDF files, which can read them, or type the part you want.',
  noWordsInPdf: 'There are no words in this PDF. Choose another file.',
  lockedPdf: 'This PDF has a password. Open it in a PDF reader, print it as a new PDF, and open that.',
  tooLargePdf: 'This PDF is larger than 25 MB. Save the pages you want as a new PDF and open that.',
  pdfNotGiven:
    'The site did not let Wordreach load this PDF again. Save the PDF, then open the saved file here.',
  formPdf:
    'This PDF is a form that only its own program can show. Print it there as a new PDF, and open that.',
  damagedPdf: 'This PDF is damaged. Get a new copy, or copy its text and paste it.',
  unpacksTooLarge: 'This file is too large once it is unpacked. Copy the part you want and paste it.',
  tooDeep:
    'This page is nested more than 1,000 levels deep, which Wordreach does not read. Copy the part you want and paste it.',
  tooManyLines:
    'This file has more than 300,000 lines, which is too many. Copy the part you want and paste it.',
  tooManyTags:
    'This file has more than a million tags, which Wordreach does not read. Copy the part you want and paste it.',
  tooManyParts: 'This book lists too many parts. Copy the part you want and paste it.',
  notAPicture: 'The browser cannot open this picture. Save it as PNG or JPEG, then open that.',
  pictureTooLarge: 'This picture is too large. Cut out the part with the text, then open that.',
  noReader: 'Wordreach could not start what reads pictures. Reload this page, then try again.',
  notRead: 'This picture could not be read. Try again, or type its text at the desk.',
  noWordsInPicture: 'No words were found in this picture. Try a sharper or larger one.',
  damaged: 'This file is damaged. Get a new copy and open that.',

  picturesLeftOut: { one: 'One picture was left out.', other: '{count} pictures were left out.' },
  footnotesLeftOut: { one: 'One footnote was left out.', other: '{count} footnotes were left out.' },
  bothLeftOut: '{pictures} and {footnotes} were left out.',
  picturesOfBoth: { one: 'One picture', other: '{count} pictures' },
  footnotesOfBoth: { one: 'one footnote', other: '{count} footnotes' },

  chaptersOf: 'Chapters of “{book}”',
  words: { one: 'one word', other: '{count} words' },
  putOnTheDesk: { one: 'Make a passage: one word', other: 'Make a passage: {count} words' },
  openAnother: 'Open another file',
} as const;
