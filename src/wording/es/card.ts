import type { card as english } from '../en/card.ts';
import type { Translated } from '../translation.ts';

/** The card beside a word of a page. */
export const card: Translated<typeof english> = {
  hear: 'oírla',
  close: 'cerrar',
  stillNeeded: 'Aún falta',
  nowTaught: 'Cuenta como enseñado desde ahora: {pattern}.',
  teach: 'enseñar este patrón',
  taughtAt: 'El paso {step} de su secuencia lo enseña.',
  learntBySight: 'Se aprende a la vista, como palabra entera.',
  noStep: 'Ningún paso lo enseña.',
  countsAs: 'cuenta como',
  bySight: 'palabra de reconocimiento visual',
  nowBySight: 'Desde ahora cuenta como palabra de reconocimiento visual.',
  name: 'un nombre',
  nowName: 'Desde ahora cuenta como nombre.',
  skip: 'no es palabra',
  nowSkipped: 'Desde ahora queda fuera del recuento.',
  swaps: 'palabras que pueden ir en su lugar',
  failed: 'No ha funcionado; inténtelo de nuevo.',
  cannotSpeak: 'Este navegador no puede hablar.',
  noVoice: 'No hay ninguna voz inglesa en este equipo; añada una en sus ajustes de voz.',
  nothingKnown: 'Ahora no se sabe nada de esta palabra; inténtelo de nuevo.',
};
