/** The texts of the page that shows a shaded PDF. */
export const pdf = {
  title: 'Shade a PDF',
  reading: 'Reading the PDF…',
  readingPages: 'Reading the PDF: {done} of {all} pages.',
  tabGone:
    'The tab with this PDF is closed or shows another page. Open the PDF again and press the button there.',
  openFile: 'Open a PDF file',
  openFileHint:
    'Its pages are shown here with the words shaded, as on a web page. The file stays on this computer.',
  chooseFile: 'Choose a PDF file, or drop it here',
  page: 'Page {page}',
  pages: 'Pages',
  pagesHint: 'For example 1-3, 5. All {count} are checked when this is empty.',
  pagesWrong: 'Write pages from 1 to {count}, such as 1-3, 5.',
  picturePages: {
    one: 'One page is a picture of text. Its words are not counted until the picture has been turned into text.',
    other:
      '{count} pages are pictures of text. Their words are not counted until the pictures have been turned into text.',
  },
  readPictures: { one: 'Read this page', other: 'Read these {count} pages' },
  readingPicture: 'Reading the picture on page {page}. This takes some seconds a page.',
  picturesFailed: 'The pictures could not be read. Try again, or type the part you want at the desk.',
  stop: 'Stop',
} as const;
