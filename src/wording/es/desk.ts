import type { desk as english } from '../en/desk.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The desk: the passages there are, how a text comes there, and how it is adapted. */
export const desk: Translated<typeof english> = {
  title: 'Mesa',
  deference:
    'Los pasajes se quedan en este navegador. Los textos de otros pueden tener derechos de autor. A usted le corresponde pedir permiso. Cada copia nombra su fuente. Su propio criterio va por delante.',
  parted:
    'Otra ventana también cambió este pasaje. Se conservan las dos versiones. La suya se llama ahora «{title}».',

  passages: 'Pasajes',
  untitled: 'Sin título',
  allPassages: 'Todos los pasajes',
  saveAll: 'Guardar todos',
  addFromFile: 'Añadir de un archivo',
  added: { one: 'Se añadió un pasaje.', other: 'Se añadieron {count} pasajes.' },

  putATextOnTheDesk: names.newPassage.es,
  takeOrPaste: `En una página sombreada, pulse «${names.editText.es}» en el panel lateral para traer aquí su texto. También puede pegar un texto o abrir un archivo.`,
  text: 'Texto',
  pasteOrWrite: 'Pegue o escriba aquí',
  beginEmpty: 'Empezar en blanco',
  putItOnTheDesk: 'Crear el pasaje',
  openAFile: 'Abrir un archivo',
  chooseAFile: 'Elija un texto, una página web, un documento de Word, un PDF o un EPUB, o suéltelo aquí',
  openingFile: 'Abriendo «{file}»…',
  taking: 'Leyendo el texto de la página…',
  notTaken: 'No se pudo leer la página. Vuelva a ella e inténtelo de nuevo.',

  passageGone: 'Este pasaje ya no existe.',
  openingPassage: 'Abriendo el pasaje…',
  notSaved: '{fault} Su texto sigue aquí.',
  titleOfPassage: 'Título',
  noSource: 'Añadir la fuente',
  byline: 'Autor',
  address: 'Dirección web',
  date: 'Fecha',
  deletePassage: 'Eliminar este pasaje',
  reallyDelete: '¿Eliminar este pasaje y todas sus versiones? No se puede deshacer.',
  deleteIt: 'Eliminar',
  keepIt: 'Conservar',

  forGroup: 'Grupo',
  beside: names.compareWith.es,
  besideNothing: 'nada',
  besideAsFound: 'el texto original',
  besideTextFor: 'el texto para {group}',
  climbAndReport: names.fullReport.es,
  makeALesson: 'Crear una lección',
  noTable:
    'No hay nada sombreado, porque Wordreach no pudo cargar su lista de palabras: {why} Recargue esta página.',
  textForGroup: 'Texto para {group}',
  textForTheGroup: 'Texto para el grupo',
  keys: 'Tab lleva a la siguiente palabra aún no decodificable. Escape y luego Tab salen del texto. Control+F busca en el texto.',

  versionsAndPractice: 'Versiones y práctica',
  version: 'Versión',
  words: 'Palabras',
  reach: 'Legible',
  practisesThisStep: 'Practica este paso',
  asFound: 'Texto original',
  percent: '{percent} %',
  nothingNew: 'este paso no enseña nada nuevo',
  countWords: { one: '1 palabra', other: '{count} palabras' },
  practises: { one: '{pattern}: 1 palabra', other: '{pattern}: {count} palabras' },
  notPractised: 'sin practicar: {patterns}',
  figures: {
    one: '1 palabra; practican este paso: {practised}',
    other: '{count} palabras; practican este paso: {practised}',
  },

  theWord: 'La palabra {word}',
  isStoryWord: 'Palabra para enseñar antes.',
  stillNeeded: `${names.missingPatterns.es}:`,
  swaps: names.replacementWords.es,
  lookingForSwaps: 'Buscando…',
  noSwaps:
    'No se encontró ninguna palabra de reemplazo legible. Enseñe esta palabra antes de leer, o déjela.',
  groupReadsIt: 'El grupo puede leerla',
  groupDoesNotReadIt: 'El grupo aún no puede leerla',
  everywhere: 'reemplazar en todo',
  makeStoryWord: 'Enseñar esta palabra antes',
  spellingsAndSounds: 'Grafías y sonidos',

  storyWords: names.wordsToPreTeach.es,
  aboutStoryWords: 'Enséñelas antes de leer. Se imprimen encima del pasaje.',
  whatItMeans: 'significado',
  takeWordOut: 'Quitar {word}',

  markSentencesOver: `${names.flagLongSentences.es}: {length}`,
  noLength: 'no',
  overWords: { one: 'más de 1 palabra', other: 'más de {count} palabras' },
  noSentences: 'ninguna',
  longSentences: { one: 'una oración', other: '{count} oraciones' },

  planTheChanges: 'Planear cambios',
  bringItTo: 'Legible al menos',
  withAtMost: 'Enseñar antes hasta',
  targetWithHelp: '{percent} %, con ayuda (Betts, 1946)',
  targetAlone: '{percent} %, sin ayuda (Betts, 1946)',
  targetEveryWord: 'todas las palabras',
  countStoryWords: { one: '1 palabra', other: '{count} palabras' },
  propose: 'Proponer cambios',
  planFailed: 'No se pudieron planear cambios por un fallo de Wordreach: {why} Recargue esta página.',
  proposeAgain: 'El texto ha cambiado. Pida otra propuesta.',
  noChanges:
    'No hay cambios que proponer: el texto ya es bastante legible, o no se encontró ningún cambio que ayude.',
  dropMore: 'Eliminar más de una quinta parte de las oraciones, si ayuda',
  textIsNear: {
    one: 'El texto está cerca de este grupo: 1 cambio.',
    other: 'El texto está cerca de este grupo: {count} cambios.',
  },
  textIsSomeWay: {
    one: 'El texto está a cierta distancia de este grupo: 1 cambio.',
    other: 'El texto está a cierta distancia de este grupo: {count} cambios.',
  },
  textIsTooFar: {
    one: 'El texto está demasiado lejos de este grupo: se encontró 1 cambio y no basta. Léalo en voz alta, guárdelo para un paso posterior o reescríbalo.',
    other:
      'El texto está demasiado lejos de este grupo: se encontraron {count} cambios y no bastan. Léalo en voz alta, guárdelo para un paso posterior o reescríbalo.',
  },
  sentencesLeftOut: {
    one: 'Se elimina 1 de {all} oraciones.',
    other: 'Se eliminan {count} de {all} oraciones.',
  },
  wordsLeft: {
    one: 'Queda 1 palabra que aún no es descifrable.',
    other: 'Quedan {count} palabras que aún no son descifrables.',
  },
  teachAsStoryWord: 'Enseñar «{word}» antes',
  sayFor: { one: 'Cambiar «{word}» por «{swap}»', other: 'Cambiar «{word}» por «{swap}» ({count} veces)' },
  leaveOut: 'Eliminar la oración «{sentence}»',
  reachFromTo: '{before} → {after} %',
  makeTicked: 'Hacer los cambios marcados',
  tickAll: 'Marcar todos',
  aboutBetts:
    'E. A. Betts, Foundations of Reading Instruction (1946): los niños leen con ayuda cuando conocen 95 de cada 100 palabras, y sin ayuda cuando conocen 99. Wordreach solo estima qué palabras se pueden decodificar.',

  rewriteWithModel: 'Reescribir con el modelo del navegador',
  aboutModel:
    'El modelo de lenguaje de este navegador funciona en este equipo. Nada de lo que escribe se envía a ningún sitio. Wordreach comprueba cada reescritura y muestra solo las que son más legibles y conservan todos los nombres, los números y las negaciones. Lea cada una antes de usarla.',
  noModelHere: 'Este navegador no tiene un modelo de lenguaje propio. Todo lo demás funciona sin él.',
  modelToDownload:
    'El navegador descarga antes su modelo de lenguaje: una sola vez, y varios gigabytes. Se queda en este equipo.',
  rewriteSentence: 'Reescribir la oración',
  rewriteForGroup: 'Reescribir para este grupo',
  putCursor: 'Para reescribir una sola oración, ponga el cursor en una de sus palabras.',
  downloadingModel: 'Descargando el modelo de lenguaje: {percent} %',
  downloadingModelOf: 'Descargando el modelo de lenguaje: {percent} % de {size} MB',
  rewriting: 'Reescribiendo la oración {number} de {all}…',
  cancelRewriting: 'Cancelar',
  noRewriting: 'No se encontró ninguna reescritura que sea más legible y conserve el sentido.',
  nothingToRewrite: 'El grupo ya puede leer todas las oraciones.',
  rewritten: {
    one: 'Hay reescrituras para 1 oración.',
    other: 'Hay reescrituras para {count} oraciones.',
  },
  useRewriting: 'Usar esta',
  dismissRewriting: 'Dejar la oración',
  rewritingOf: 'Reescrituras de «{sentence}»',

  beginAPassage: 'Empezar un pasaje',
  aboutBeginning:
    'Wordreach escribe un texto breve que {group} puede leer: dos personas, un lugar y una pequeña historia. Es un borrador. Corríjalo antes de usarlo.',
  topicWords: 'Palabras que usar, si encajan',
  topicExample: 'crab, net, dock',
  beginning: 'Escribiendo el borrador…',
  isADraft: {
    one: 'Es un borrador hecho con modelos de oraciones; 1 palabra practica este paso. Corríjalo antes de usarlo.',
    other:
      'Es un borrador hecho con modelos de oraciones; {count} palabras practican este paso. Corríjalo antes de usarlo.',
  },
  wordsNotUsed: 'No se usaron: {words}. El grupo aún no puede leerlas, o no encajan en la historia.',
  tooLittleKnown:
    '{group} puede leer aún muy pocas palabras para un pasaje. Inténtelo de nuevo unos pasos después.',
  draftFailed: 'No se pudo escribir el borrador por un fallo de Wordreach: {why} Recargue esta página.',

  // What the field says itself, in the words of its library (`desk/editor-phrases.ts`).
  find: 'Buscar',
  replaceWith: 'Reemplazar por',
  findNext: 'siguiente',
  findPrevious: 'anterior',
  findAll: 'todas',
  matchCase: 'mayúsculas y minúsculas',
  matchPattern: 'expresión regular',
  wholeWords: 'palabra completa',
  replaceOne: 'reemplazar',
  replaceAll: 'reemplazar todas',
  closeSearch: 'cerrar',
  foundPlace: 'lugar encontrado',
  foundOnLine: 'en la línea',
  replacedOnLine: 'reemplazado en la línea {line}',
  replacedPlaces: 'lugares reemplazados: {places}',
  goToLine: 'Ir a la línea',
  go: 'ir',
  selectionDeleted: 'Selección eliminada',
  controlCharacter: 'Carácter de control',
};
