import type { report as english } from '../en/report.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The report on one text. */
export const report: Translated<typeof english> = {
  title: 'Informe',
  documentTitle: '{title} · informe de Wordreach',
  fileName: 'informe para {group}',
  for: 'Grupo',
  print: 'Imprimir o guardar como PDF',
  saveHtml: 'Guardar como página web',
  reading: 'Leyendo el texto…',
  noTable:
    'No se puede crear el informe, porque Wordreach no pudo cargar su lista de palabras: {why} Recargue esta página.',
  forAtStep: 'Grupo {group}, paso {step} de {sequence}, {day}.',
  forGroup: 'Grupo {group}, {day}.',
  deference:
    'Wordreach estima qué palabras puede decodificar un grupo con los patrones enseñados. No evalúa a ningún niño. El criterio docente va por delante.',
  gapsHint:
    'De cada patrón: el paso que lo enseña y cuántas palabras más son legibles si se enseña. Algunas palabras necesitan además otro patrón.',
  words: 'Palabras',
  settings: 'Ajustes del grupo',
  adaptedFor: 'Texto adaptado para {group}.',
  asFound: 'Texto original.',
  noGaps: 'No falta ningún patrón.',
  inNoStep: 'no está en la secuencia',
  atStep: 'paso {step}',
  onlyWithOthers: 'estas palabras necesitan además otro patrón',
  opensPlaces: {
    one: '1 palabra más legible si se enseña',
    other: '{count} palabras más legibles si se enseña',
  },
  sequence: 'Secuencia',
  sequenceStep: '{sequence}, paso {step} de {steps}: {title}',
  noSequence: 'Ninguna',
  alsoTaught: names.taughtEarly.es,
  notYet: names.notSecure.es,
  bySight: 'Palabras de reconocimiento visual añadidas',
  storyWords: names.wordsToPreTeach.es,
  names: 'Nombres',
  namesHidden: { one: '1 (no se muestra)', other: '{count} (no se muestran)' },
  leftOut: 'Omitidas',
  beyond: 'Aún no decodificables',
  unsure: 'Dudosas: revíselas usted',
  fresh: 'Decodificables, practican este paso',
  reads: 'Decodificables',
  knownBySight: 'Palabras de reconocimiento visual',
  namesNotCounted: 'Nombres, sin contar',
  leftOutForGroup: 'Omitidas, sin contar',
  wordCount: { one: '1 palabra', other: '{count} palabras' },
  placeCount: { one: '1 lugar', other: '{count} lugares' },
  climb: names.readableByStep.es,
  beside: 'Comparar {group} con',
  noClimb: '{group}: este grupo no tiene secuencia, así que no hay pasos que mostrar.',
  textFailed: 'No se pudo leer el texto. Vuelva a él y abra el informe de nuevo.',
  chooseText: `Elija primero un texto. Pulse «${names.fullReport.es}» en el panel, en la mesa o en la estantería.`,
  pageGone:
    'La página ya no está sombreada. Vuelva a ella, pulse el botón de Wordreach y abra el informe de nuevo.',
  notOnShelf: 'Este texto ya no está en la estantería. Abra otro allí.',
  notOnDesk: 'Este pasaje ya no existe. Abra otro en la mesa.',
  untitled: 'Texto sin título',
};
