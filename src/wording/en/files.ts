/** Opening a teacher's files: why one cannot be opened, what was left out, which chapters are taken. */
export const files = {
  empty: 'This file is empty. Choose another.',
  tooLarge: 'This file is larger than 25 MB. Copy the part you want and paste it.',
  unreadable: 'The browser cannot read this file. See that it is still where it was, and choose it again.',
  unknownMake: 'This file is damaged or made in a way the desk does not know. Copy its text and paste it.',
  noText: 'This file is not a text. Open it in the program that made it, and copy and paste its text.',
  noWords: 'There are no words in this file. Choose another.',
  packed: 'This is a packed file of another kind. Unpack it, and open the file inside.',
  lockedOrOldDocument:
    'This document is locked by a password or from an old Word. Open it in Word and save it as .docx without a password.',
  richText: 'This is a rich text file. Open it in Word, and save it as .docx.',
  misnamed:
    'This file is named .{ending} but is something else, or damaged. Get it again, or copy its text and paste it.',
  otherKind:
    'The desk opens text, web pages, Word documents, PDF and EPUB. For other files, copy the text and paste it.',
  noWordsInPage: 'There are no words in this web page. Open it in the browser, and copy and paste its text.',
  notFromWord: 'This is not a document that Word wrote. Copy its text and paste it.',
  damagedDocument: 'This Word document is damaged. Open it in Word, save it again, and open that.',
  noWordsInDocument: 'There are no words in this document. If its text is a picture, type the part you want.',
  damagedBook: 'This book is damaged. Get it again from where it came from, and open that.',
  lockedBook: 'This book is locked by its seller, so only their reader opens it. Type the part you want.',
  noWordsInBook: 'There are no words in this book. Choose another.',
  slowPdf: 'This PDF takes too long to read. Copy its text and paste it.',
  longPdf: 'This PDF has {pages} pages. Save the pages you want as a PDF of their own, and open that.',
  pdfOfPictures:
    'This PDF is made of pictures of its pages, without text. Let a scanning program read it first, or type the part you want.',
  noWordsInPdf: 'There are no words in this PDF. Choose another file.',
  lockedPdf:
    'This PDF is locked by a password. Open it in a PDF reader, print it as a new PDF, and open that.',
  damagedPdf: 'This PDF is damaged. Get it again from where it came from, or copy its text and paste it.',
  unpacksTooLarge: 'This file unpacks to more than the desk holds. Copy the part you want and paste it.',
  tooDeep:
    'This page has parts in each other more than 1,000 deep, which no page for reading has. Copy the part you want and paste it.',
  tooManyParts: 'This book lists more parts than any book has. Copy the part you want and paste it.',
  damaged: 'This file is damaged. Get it again from where it came from, and open that.',

  picturesLeftOut: { one: 'One picture was left out.', other: '{count} pictures were left out.' },
  footnotesLeftOut: { one: 'One footnote was left out.', other: '{count} footnotes were left out.' },
  bothLeftOut: '{pictures} and {footnotes} were left out.',
  picturesOfBoth: { one: 'One picture', other: '{count} pictures' },
  footnotesOfBoth: { one: 'one footnote', other: '{count} footnotes' },

  chaptersOf: 'Chapters of “{book}”',
  words: { one: 'one word', other: '{count} words' },
  putOnTheDesk: { one: 'Put one word on the desk', other: 'Put {count} words on the desk' },
  openAnother: 'Open another file',
} as const;
