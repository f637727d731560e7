import type { manifest as english } from '../en/manifest.ts';
import type { Translated } from '../translation.ts';

/** The texts about the extension that the browser shows before any page of the extension is open. */
export const manifest: Translated<typeof english> = {
  description:
    'Compara cualquier texto web con lo enseñado a un grupo de lectura: qué palabras son decodificables y qué patrones faltan.',
  button: 'Revisar esta página para su grupo',
  nextWord: 'Ir a la siguiente palabra aún no decodificable',
  previousWord: 'Ir a la anterior palabra aún no decodificable',
  openDesk: 'Abrir la mesa de trabajo',
  checkSelection: 'Revisar la selección para su grupo',
  readPicture: 'Leer esta imagen',
};
