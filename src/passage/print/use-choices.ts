import { useState } from 'preact/hooks';
import { paperOf, parseChoices, type SheetChoices, usualChoices } from './sheet-choices.ts';

/** Returns the last choices for sheets, and a function that changes and saves these choices. */
export function useChoices(): readonly [SheetChoices, (choices: SheetChoices) => void] {
  const [choices, setChoices] = useState(loadChoices);
  return [
    choices,
    (changed) => {
      setChoices(changed);
      keepChoices(changed);
    },
  ];
}

const KEY = 'sheet-choices';

/**
 * Loads the last choices for sheets. If no choices were saved, returns the usual choices with the paper size for the
 * browser's language.
 */
function loadChoices(): SheetChoices {
  const usual = { ...usualChoices, paper: paperOf(navigator.language) };
  try {
    return parseChoices(JSON.parse(localStorage.getItem(KEY) ?? 'null'), usual);
  } catch {
    return usual;
  }
}

/**
 * Saves the choices for the next sheet. Shows no message if the browser cannot save the choices, because the current
 * sheet is still right.
 */
function keepChoices(choices: SheetChoices): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(choices));
  } catch {}
}
