import { say } from '../../wording/say.ts';

/**
 * Returns the phrases of the editing library, keyed by the library's own English. The library replaces `$` with a
 * number.
 */
export function editorPhrases(): Readonly<Record<string, string>> {
  return {
    Find: say('desk.find'),
    Replace: say('desk.replaceWith'),
    next: say('desk.findNext'),
    previous: say('desk.findPrevious'),
    all: say('desk.findAll'),
    'match case': say('desk.matchCase'),
    regexp: say('desk.matchPattern'),
    'by word': say('desk.wholeWords'),
    replace: say('desk.replaceOne'),
    'replace all': say('desk.replaceAll'),
    close: say('desk.closeSearch'),
    'current match': say('desk.foundPlace'),
    'on line': say('desk.foundOnLine'),
    'replaced match on line $': say('desk.replacedOnLine', { line: '$' }),
    'replaced $ matches': say('desk.replacedPlaces', { places: '$' }),
    'Go to line': say('desk.goToLine'),
    go: say('desk.go'),
    'Selection deleted': say('desk.selectionDeleted'),
    'Control character': say('desk.controlCharacter'),
  };
}
