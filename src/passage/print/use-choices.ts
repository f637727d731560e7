import { useState } from 'preact/hooks';
import { keepChoices, loadChoices } from './keep-choices.ts';
import type { SheetChoices } from './sheet-choices.ts';

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
