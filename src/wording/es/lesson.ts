import type { lesson as english } from '../en/lesson.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The Lesson page. */
export const lesson: Translated<typeof english> = {
  noTable:
    'No se puede crear la lección, porque Wordreach no pudo cargar su lista de palabras: {why} Recargue esta página.',
  opening: 'Abriendo la lección…',
  footer:
    'Las palabras se eligen entre los patrones enseñados al grupo. La mayoría de los significados vienen de un diccionario. Lea la hoja antes de imprimirla. El programa de su escuela y su propio criterio van por delante.',
  for: 'Grupo',
  around: 'Pasaje',
  noPassage: 'ninguno',
  untitled: 'Sin título',
  nothingTaught: 'Aún no se ha enseñado nada. Elija un paso para el grupo en la página Grupos.',
  about: 'Practica {patterns}.',
  sheetNumber: names.version.es,
  newSheet: names.shuffleAll.es,
  undo: 'Deshacer',
  numberHint:
    'La misma versión tiene siempre las mismas palabras. Las partes fijadas o editadas se quedan al mezclar.',
  choosing: 'Eligiendo palabras…',
  makeAgain: names.shuffle.es,
  done: 'Listo',
  edit: 'Editar',
  pin: 'Fijar',
  unpin: 'Soltar',
  putBack: 'Volver a poner',
  leaveOut: 'Omitir',
  leftOut: 'No está en esta hoja.',
  text: 'Texto',
  noteFor: '{title}: nota para usted',
  cell: '{column}, línea {line}',
  takeOutLine: 'Quitar la línea {line}',
  takeOut: 'Quitar',
  unread: 'Aún no decodificable para este grupo: {words}.',
  addWord: 'Añadir una palabra',
  addLine: 'Añadir una línea',
  takeOutAll: 'Quitar todo «{title}»',
  takeOutThis: 'Quitar todo',
  whichSheet: 'Hoja',
  pupilsSheet: 'Hoja de los alumnos',
  yourKey: 'Clave docente',
  back: 'Volver a la lección',
  forPupils: 'Para los alumnos: con líneas',
  forYou: 'Para usted: con respuestas',
  noWordFor: 'Todas las palabras con {pattern} necesitan aún otros patrones: {next}.',
  notYetReadable: '{word} (aún no legible)',
};
