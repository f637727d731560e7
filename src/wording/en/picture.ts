import { names } from '../names.ts';

/** The texts of the page that reads pictures of text. */
export const picture = {
  title: 'Picture of text',
  about: 'The picture is read on this computer. It is not stored and not sent anywhere.',
  gone: 'This picture is no longer here. Take it again on its page, or open a file.',
  pictures: 'Pictures',
  pictureOf: 'Picture {number}, with its words marked',
  legend:
    'A dashed box means that the reading is not sure. Check that word. It never counts as not yet decodable.',
  text: 'Text',
  correctIt:
    'Correct the text where it was read wrongly. The marks and the percentage are then worked out again.',
  forGroup: 'For {group}',
  starting: 'Getting ready to read…',
  reading: 'Reading the picture…',
  stop: 'Stop',
  again: 'Read again',
  stopped: 'Reading was stopped.',
  nothing: 'This screen has nothing new. Scroll the page, then press the button again.',
  apart: `This screen has no line in common with the one before, so its text is at the end. Scroll less before you press “${names.readScreen.en}”.`,
  noWords: 'No words were found in this picture. If it has some, try a sharper or larger picture.',
  toCheck: { one: 'One word to check', other: '{count} words to check' },
  aboutChecking: 'Press a word to go to it in the text and correct it, or press “It is right”.',
  right: 'It is right',
  isRight: '“{word}” is right',
  addAnother: 'Add another picture',
  openOne: 'Open a picture',
  choose: 'Choose pictures of text (PNG, JPEG, WebP), or drop them here',
} as const;
