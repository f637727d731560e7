import type { picture as english } from '../en/picture.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The texts of the page that reads pictures of text. */
export const picture: Translated<typeof english> = {
  title: 'Imagen de texto',
  about: 'La imagen se lee en este equipo. No se guarda ni se envía a ningún sitio.',
  gone: 'Esta imagen ya no está aquí. Tómela otra vez en su página o abra un archivo.',
  pictures: 'Imágenes',
  pictureOf: 'Imagen {number}, con sus palabras marcadas',
  legend:
    'Un recuadro discontinuo indica que la lectura no es segura. Revise esa palabra. Nunca cuenta como aún no decodificable.',
  text: 'Texto',
  correctIt: 'Corrija el texto donde se leyó mal. Las marcas y las cifras se actualizan.',
  forGroup: 'Para {group}',
  starting: 'Preparando la lectura…',
  reading: 'Leyendo la imagen…',
  stop: 'Detener',
  again: 'Leer otra vez',
  stopped: 'La lectura se detuvo.',
  nothing: 'Esta pantalla no tiene nada nuevo. Desplace la página y pulse otra vez.',
  apart: `Esta pantalla no tiene ninguna línea en común con la anterior, así que su texto está al final. Desplace menos antes de pulsar «${names.readScreen.es}».`,
  noWords:
    'No se encontraron palabras en esta imagen. Si las tiene, pruebe con una imagen más nítida o más grande.',
  toCheck: { one: 'Una palabra por revisar', other: '{count} palabras por revisar' },
  aboutChecking: 'Pulse una palabra para ir a ella en el texto y corregirla, o pulse «Está bien».',
  right: 'Está bien',
  isRight: '«{word}» es correcta',
  addAnother: 'Añadir otra imagen',
  openOne: 'Abrir una imagen',
  choose: 'Elija imágenes de texto (PNG, JPEG, WebP) o suéltelas aquí',
};
