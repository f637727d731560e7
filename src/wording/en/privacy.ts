/** What becomes of what the teacher reads and keeps. */
export const privacy = {
  title: 'Privacy',
  onlyOnPress:
    'Wordreach reads a page only when you press its button, and only that page. Nothing leaves your computer: there is no server, no account and no count of use.',
  keptHere:
    'Groups, sequences, passages, lessons and the shelf are kept in this browser. You can save all of it in a file, and it goes when you remove the extension.',
  copies:
    'If you tick copying to your other browsers, groups and sequences are copied by your browser’s own account, never with the names of pupils and places. It is off until you tick it.',
  files:
    'Files to share leave names out unless you tick them. The file that saves everything has them, so keep it to yourself.',
  whatPagesSee:
    'A script of a page you check could see which of its words are marked, in four kinds, and nothing else: not your group, not what was taught, not the panel.',
  licences: 'Whose work is in Wordreach, and under which licences',
} as const;
