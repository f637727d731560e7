import type { pdf as english } from '../en/pdf.ts';
import type { Translated } from '../translation.ts';

/** The texts of the page that shows a shaded PDF. */
export const pdf: Translated<typeof english> = {
  title: 'Sombrear un PDF',
  reading: 'Leyendo el PDF…',
  readingPages: 'Leyendo el PDF: {done} de {all} páginas.',
  tabGone:
    'La pestaña de este PDF está cerrada o muestra otra página. Abra el PDF de nuevo y pulse allí el botón.',
  openFile: 'Abrir un archivo PDF',
  openFileHint:
    'Sus páginas se muestran aquí con las palabras sombreadas, como en una página web. El archivo no sale de este equipo.',
  chooseFile: 'Elija un archivo PDF, o suéltelo aquí',
  page: 'Página {page}',
  pages: 'Páginas',
  pagesHint: 'Por ejemplo 1-3, 5. Si está vacío, se comprueban las {count}.',
  pagesWrong: 'Escriba páginas de la 1 a la {count}, como 1-3, 5.',
  picturePages: {
    one: 'Una página es una imagen de texto. No se cuenta hasta que se lee.',
    other: '{count} páginas son imágenes de texto. No se cuentan hasta que se leen.',
  },
  readPictures: { one: 'Leer esta página', other: 'Leer estas {count} páginas' },
  readingPicture: 'Leyendo la imagen de la página {page}. Tarda unos segundos por página.',
  picturesFailed:
    'No se pudieron leer las imágenes. Inténtelo de nuevo, o escriba en la mesa la parte que desee.',
  stop: 'Detener',
};
