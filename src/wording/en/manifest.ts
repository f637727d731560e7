/** The texts about the extension that the browser shows before any page of the extension is open. */
export const manifest = {
  description:
    'Checks any web text against what a reading group has been taught: which words are decodable, which patterns are missing.',
  button: 'Check this page for your group',
  nextWord: 'Go to the next word that is not yet decodable',
  previousWord: 'Go to the previous word that is not yet decodable',
  openDesk: 'Open the desk',
  checkSelection: 'Check the selection for your group',
  readPicture: 'Read this picture',
} as const;
