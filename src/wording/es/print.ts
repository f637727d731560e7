import type { print as english } from '../en/print.ts';
import type { Translated } from '../translation.ts';

/** The ways something leaves a page, and the view in which a sheet is printed; the sheet itself is English. */
export const print: Translated<typeof english> = {
  openPrintView: 'Imprimir…',
  saveForWord: 'Guardar para Word',
  saveAsWebPage: 'Guardar como página web',
  saveAsPlainText: 'Guardar como texto sin formato',
  copy: 'Copiar',
  saved: 'Se guardó con sus descargas.',
  notMade:
    'No se pudo crear el archivo ({why}). Recargue esta página e inténtelo de nuevo, o copie el texto.',
  copied: 'Copiado.',
  notCopied:
    'El navegador no permitió copiar el texto. Guárdelo como texto sin formato, o inténtelo de nuevo.',

  title: 'Imprimir',
  printOrSave: 'Imprimir o guardar como PDF',
  backToThePassage: 'Volver al pasaje',
  browserLines:
    'Si el navegador añade sus propias líneas arriba y abajo, desmárquelas en su ventana de impresión.',
  theSheet: 'La hoja',
  pages: { one: 'Una página.', other: '{count} páginas.' },

  letters: 'Letras',
  size: 'Tamaño',
  points: '{points} puntos',
  font: 'Tipo de letra',
  fontBook: 'De libro, con remates',
  fontPlain: 'Sencilla, sin remates',
  fontWide: 'Ancha, con letras fáciles de distinguir',
  fontRound: 'Redonda, parecida a la escritura a mano',
  gaps: 'Espacio entre letras y palabras',
  gapsUsual: 'Normal',
  gapsWider: 'Más amplio',
  gapsWidest: 'Muy amplio',
  lineSpacing: 'Espacio entre líneas',
  linesClose: 'Estrecho',
  linesOpen: 'Holgado',
  linesWide: 'Amplio, para escribir entre líneas',

  page: 'Página',
  besideEachLine: 'Junto a cada línea',
  besideNothing: 'Nada',
  besideNumber: 'El número de la línea',
  besideCount: 'Palabras leídas hasta su final',
  paper: 'Papel',
  paperA4: 'A4',
  paperLetter: 'Carta',
  storyWordsInABox: 'Palabras del pasaje en un recuadro',
  nameLine: 'Una línea para el nombre y la fecha',

  marks: 'Marcas en las palabras',
  underlineFresh: 'Subrayar las palabras de este paso',
  dots: 'Puntos entre sílabas',
  vowels: 'Marcas sobre vocales largas y cortas',
};
