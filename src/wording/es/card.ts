import type { card as english } from '../en/card.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The texts of the card beside a word of a page. */
export const card: Translated<typeof english> = {
  hear: 'escuchar',
  close: 'cerrar',
  stillNeeded: names.missingPatterns.es,
  nowTaught: 'Marcado como enseñado: {pattern}.',
  notTaught: 'Ya no está marcado como enseñado: {pattern}.',
  undone: 'Deshecho.',
  teach: names.markAsTaught.es,
  taughtAt: 'Se enseña en el paso {step} de su secuencia.',
  learntBySight: 'Grafía irregular: enséñela como palabra de reconocimiento visual.',
  noStep: 'No está en su secuencia.',
  countsAs: names.countsAs.es,
  wordCounts: '{word} cuenta como: {as}.',
  asJudged: 'según sus patrones',
  bySight: names.bySightWord.es,
  name: 'nombre',
  skip: names.ignored.es,
  swaps: names.replacementWords.es,
  failed: 'No funcionó. Inténtelo de nuevo.',
  cannotSpeak: 'Este navegador no puede leer palabras en voz alta.',
  noVoice: 'No hay ninguna voz inglesa en este equipo. Añada una en sus ajustes de voz.',
  covered: 'Algo de esta página está encima de la tarjeta, así que no cambia nada. Use el panel.',
  moved: 'La tarjeta acaba de abrirse o de moverse. Pulse de nuevo.',
  onlyPanel: 'En esta página la tarjeta no cambia nada. Use el panel.',
  nothingKnown: 'Wordreach no pudo buscar esta palabra. Inténtelo de nuevo.',
};
