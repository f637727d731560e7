import { useState } from 'preact/hooks';
import { paperOf, parseChoices, type SheetChoices, usualChoices } from './sheet-choices.ts';

/** How sheets are set, as chosen the last time, and a way to choose otherwise, which is kept. */
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

/** How sheets were set the last time; as usual where nothing was kept, on the paper of the browser's language. */
function loadChoices(): SheetChoices {
  const usual = { ...usualChoices, paper: paperOf(navigator.language) };
  try {
    return parseChoices(JSON.parse(localStorage.getItem(KEY) ?? 'null'), usual);
  } catch {
    return usual;
  }
}

/** Saves the choices for the next sheet. Where the browser cannot save them there is no message, since this sheet is right all the same. */
function keepChoices(choices: SheetChoices): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(choices));
  } catch {}
}
