import type { files as english } from '../en/files.ts';
import type { Translated } from '../translation.ts';

/** Texts about opening a teacher's files: why a file cannot be opened, what was left out, and which chapters are taken. */
export const files: Translated<typeof english> = {
  empty: 'Este archivo está vacío. Elija otro.',
  tooLarge: 'Este archivo ocupa más de 25 MB. Copie la parte que desee y péguela.',
  unreadable:
    'El navegador no puede leer este archivo. Compruebe que sigue donde estaba y vuelva a elegirlo.',
  unknownMake: 'Este archivo está dañado, o Wordreach no conoce su formato. Copie su texto y péguelo.',
  noText:
    'Este archivo no es un texto. Ábralo en el programa con el que se hizo; después copie y pegue su texto.',
  noWords: 'No hay palabras en este archivo. Elija otro.',
  packed: 'Este es un archivo comprimido. Descomprímalo y abra el archivo que contiene.',
  lockedOrOldDocument:
    'Este documento tiene contraseña o es de una versión antigua de Word. Ábralo en Word y guárdelo como .docx sin contraseña.',
  richText: 'Este es un archivo de texto enriquecido. Ábralo en Word y guárdelo como .docx.',
  misnamed:
    'Este archivo se llama .{ending}, pero es de otro tipo o está dañado. Consígalo de nuevo, o copie su texto y péguelo.',
  otherKind:
    'Wordreach abre textos, páginas web, documentos de Word, PDF, EPUB e imágenes. Si el archivo es de otro tipo, copie el texto y péguelo.',
  noWordsInPage: 'No hay palabras en esta página web. Ábrala en el navegador y copie y pegue su texto.',
  notFromWord: 'Este no es un documento escrito por Word. Copie su texto y péguelo.',
  damagedDocument: 'Este documento de Word está dañado. Ábralo en Word, guárdelo de nuevo y abra esa copia.',
  noWordsInDocument:
    'No hay palabras en este documento. Si su texto es una imagen, escriba la parte que desee.',
  damagedBook: 'Este libro está dañado. Consiga otra copia y ábrala.',
  lockedBook:
    'Este libro está protegido por quien lo vende y solo se abre en su aplicación. Escriba la parte que desee.',
  noWordsInBook: 'No hay palabras en este libro. Elija otro.',
  tooSlow: 'Se tarda demasiado en leer este archivo. Copie la parte que desee y péguela.',
  slowPdf: 'Se tarda demasiado en leer este PDF. Copie su texto y péguelo.',
  longPdf:
    'Este PDF tiene {pages} páginas, que son demasiadas. Guarde las que desee en un PDF nuevo y ábralo.',
  pdfOfPictures:
    'Este PDF tiene imágenes de páginas, no texto. Ábralo en la página para archivos PDF, que puede leerlas, o escriba la parte que desee.',
  noWordsInPdf: 'No hay palabras en este PDF. Elija otro archivo.',
  lockedPdf: 'Este PDF tiene contraseña. Ábralo en un lector de PDF, imprímalo como un PDF nuevo y abra ese.',
  tooLargePdf: 'Este PDF pasa de 25 MB. Guarde las páginas que desee en un PDF nuevo y ábralo.',
  pdfNotGiven: 'El sitio no dio este PDF por segunda vez. Guárdelo y abra el archivo aquí.',
  formPdf:
    'Este PDF es un formulario que solo muestra su propio programa. Imprímalo allí como un PDF nuevo y abra ese.',
  damagedPdf: 'Este PDF está dañado. Consiga otra copia, o copie su texto y péguelo.',
  unpacksTooLarge:
    'Este archivo, una vez descomprimido, es demasiado grande. Copie la parte que desee y péguela.',
  tooDeep:
    'Esta página tiene más de 1000 niveles de anidamiento, y Wordreach no la lee. Copie la parte que desee y péguela.',
  tooManyLines:
    'Este archivo tiene más de 300 000 líneas, que son demasiadas. Copie la parte que desee y péguela.',
  tooManyTags:
    'Este archivo tiene más de un millón de etiquetas, y Wordreach no lo lee. Copie la parte que desee y péguela.',
  tooManyParts: 'Este libro enumera demasiadas partes. Copie la parte que desee y péguela.',
  notAPicture: 'El navegador no puede abrir esta imagen. Guárdela como PNG o JPEG y ábrala.',
  pictureTooLarge: 'Esta imagen es demasiado grande. Recorte la parte con el texto y ábrala.',
  noReader: 'Wordreach no pudo iniciar la lectura de imágenes. Recargue esta página e inténtelo de nuevo.',
  notRead: 'No se pudo leer esta imagen. Inténtelo de nuevo o escriba su texto en la mesa.',
  noWordsInPicture: 'No se encontraron palabras en esta imagen. Pruebe con una más nítida o más grande.',
  damaged: 'Este archivo está dañado. Consiga otra copia y ábrala.',

  picturesLeftOut: { one: 'Se omitió una imagen.', other: 'Se omitieron {count} imágenes.' },
  footnotesLeftOut: { one: 'Se omitió una nota al pie.', other: 'Se omitieron {count} notas al pie.' },
  bothLeftOut: 'Se omitieron {pictures} y {footnotes}.',
  picturesOfBoth: { one: 'una imagen', other: '{count} imágenes' },
  footnotesOfBoth: { one: 'una nota al pie', other: '{count} notas al pie' },

  chaptersOf: 'Capítulos de «{book}»',
  words: { one: 'una palabra', other: '{count} palabras' },
  putOnTheDesk: { one: 'Crear pasaje: una palabra', other: 'Crear pasaje: {count} palabras' },
  openAnother: 'Abrir otro archivo',
};
