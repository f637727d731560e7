import { parseChoices, type SheetChoices } from './sheet-choices.ts';

const KEY = 'sheet-choices';

/** How sheets were set the last time; as usual where nothing was kept. */
export function loadChoices(): SheetChoices {
  try {
    return parseChoices(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
  } catch {
    return parseChoices(null);
  }
}

/** Keeps the choices for the next sheet. Nothing is said where the browser refuses: the sheet in hand is right anyway. */
export function keepChoices(choices: SheetChoices): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(choices));
  } catch {}
}
