import type { panel as english } from '../en/panel.ts';
import type { Translated } from '../translation.ts';

/** The side panel. */
export const panel: Translated<typeof english> = {
  readingThePage: 'Leyendo la página…',
  notShaded: 'Esta página no está sombreada.',
  shadeThisPage: 'Sombrear esta página',
  openAStory:
    'Abra un cuento en la web y pulse el botón de Wordreach en la barra de herramientas: solo entonces puede leer una página.',
  deference:
    'Wordreach estima lo que se puede descodificar; no evalúa a ningún niño. El programa de su escuela y su propio criterio van por delante.',
};
