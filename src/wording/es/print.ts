import type { print as english } from '../en/print.ts';
import type { Translated } from '../translation.ts';

/** Texts for printing, saving and copying, and for the print view of a sheet. The sheet itself is in English. */
export const print: Translated<typeof english> = {
  openPrintView: 'Imprimir…',
  saveForWord: 'Guardar para Word',
  saveAsWebPage: 'Guardar como página web',
  saveAsPlainText: 'Guardar como texto sin formato',
  copy: 'Copiar',
  saved: 'Guardado con sus descargas.',
  notMade:
    'No se pudo crear el archivo ({why}). Recargue esta página e inténtelo de nuevo, o copie el texto.',
  copied: 'Copiado.',
  notCopied: 'El navegador no permitió copiar. Guarde como texto sin formato, o inténtelo de nuevo.',

  title: 'Imprimir',
  printOrSave: 'Imprimir o guardar como PDF',
  backToThePassage: 'Volver al pasaje',
  browserLines: 'Si el navegador añade su propio encabezado y pie, quítelos en su ventana de impresión.',
  theSheet: 'La hoja',
  pages: { one: '1 página.', other: '{count} páginas.' },

  letters: 'Letras',
  size: 'Tamaño',
  points: '{points} puntos',
  font: 'Tipo de letra',
  fontBeginner: 'Andika (para empezar)',
  fontBook: 'De libro (con remates)',
  fontPlain: 'Sencilla (sin remates)',
  fontWide: 'Ancha, fácil de distinguir',
  fontRound: 'Redonda, como manuscrita',
  gaps: 'Espacio entre letras',
  gapsUsual: 'Normal',
  gapsWider: 'Más amplio',
  gapsWidest: 'Muy amplio',
  lineSpacing: 'Interlineado',
  linesClose: 'Estrecho',
  linesOpen: 'Holgado',
  linesWide: 'Amplio, para escribir',

  page: 'Página',
  besideEachLine: 'Al lado de cada línea',
  besideNothing: 'Nada',
  besideNumber: 'Número de línea',
  besideCount: 'Palabras hasta aquí',
  paper: 'Papel',
  paperA4: 'A4',
  paperLetter: 'Carta',
  storyWordsInABox: 'Recuadro: palabras para enseñar antes',
  nameLine: 'Línea para nombre y fecha',

  marks: 'Marcas en las palabras',
  underlineFresh: 'Subrayar las palabras de este paso',
  dots: 'Puntos entre sílabas',
  vowels: 'Marcas de vocal larga y corta',
};
