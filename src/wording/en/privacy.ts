/** The statement on privacy: where the teacher's texts and groups are kept and who can see them. */
export const privacy = {
  title: 'Privacy',
  inShort: 'In short',
  onlyOnPress:
    'Wordreach reads a page only when you press its button, and only that page. It sends nothing anywhere: there is no server, no account and no usage count.',
  names:
    'Names of pupils and places stay in this browser. They leave it only in a file that you save with names.',
  read: 'PDF files, pictures, rewritings',
  pdf: 'When you press the button on a PDF, its page fetches the same file again from its own site, as the browser did before. Nothing else is asked, and the file stays on your computer.',
  kept: 'Kept in this browser',
  keptHere:
    'Groups, sequences, passages, lessons, the words of sheets you printed or saved, and the shelf are kept in this browser. You can save everything to a file. If you remove the extension, everything in the browser is deleted.',
  copies:
    'You can copy groups and sequences to your other browsers through your own browser account. Names of pupils and places are never copied. This is off until you turn it on.',
  files:
    'Files for sharing hold no names unless you include them. The file from “Save everything” holds all names, so do not share it.',
  forExperts: 'For technical staff: what a web page could find out',
  whatPagesSee:
    'A script on a page you check could see which of its words are marked, in five kinds, and that a card is open, where and how large. By showing words of its own, it could find out which patterns are marked as missing, and which of them come in the next steps. It cannot see the text of a card, your groups or the panel. Names, by-sight words, ignored words and readable words all look the same: unmarked.',
  privateMarks:
    'Private marks (a setting in the panel) hide the marks too. They are drawn on a layer over the page: a script could see that the layer is there, but nothing on it. Some marks look simpler, and they are not printed. Wordreach turns them on by itself in frames of other sites, and where a page removes marks or keeps rewriting its text.',
  whatCardsDo:
    'A card changes nothing while something on the page lies over it, or in its first half second in a place. In a frame of another site (in Firefox: in any frame), or on a page that allows no card, use the panel. In Firefox, a page made for it could hide a card for moments that Wordreach does not see, so use the panel on a page you do not trust.',
  model:
    'If your browser has a language model of its own and you ask for rewritings of a passage, its sentences go to that model on this computer and nowhere else. If you ask it for a draft, the words that the group can read and two names go there. The browser may download the model first; your text is not part of that.',
  pictures:
    'Wordreach reads a picture of text, or a screen, only when you ask for it, and on this computer only. What reads it came with the extension. The picture is in memory until you close its page, and it is not stored. Its text is kept only if you make a passage or a lesson of it, or save it to the shelf.',
  licences: 'Credits and licences',
} as const;
