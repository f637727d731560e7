import type { passage as english } from '../en/passage.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** Texts about taking the text of a page, and about the source of a passage. */
export const passage: Translated<typeof english> = {
  notShaded: `La página ya no está sombreada. Vuelva a ella, pulse el botón de Wordreach y después «${names.editText.es}».`,
  noWords:
    'La parte revisada de esta página no tiene palabras. Elija «Toda la página» en el panel, o seleccione el texto.',
  source: 'Fuente: {source}',
};
