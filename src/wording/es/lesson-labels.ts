import type { lessonLabels as english } from '../en/lesson-labels.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** What `src/lesson` calls its parts and choices; a test holds the English to it. */
export const lessonLabels: Translated<typeof english> = {
  lettersAndSounds: names.letterSoundReview.es,
  buildingWords: 'Formar palabras',
  wordLists: 'Listas de palabras',
  vocabularyWord: 'Palabra de vocabulario',
  dictation: 'Dictado',
  wordsSaidAlike: names.homophones.es,
  smoothReading: names.phrases.es,
  howManyLetters: 'Cuántas letras',
  waysToSpell: 'Formas de escribir',
  howMany: 'Cuántas',
  wrongSpellings: 'Grafías incorrectas',
  onKeyOnly: 'solo en la clave',
  onSheetToo: 'también en la hoja de los alumnos',
  pattern: 'Patrón',
  allOfStep: 'todos los de este paso',
  oneSyllable: 'Palabras de una sílaba',
  chain: 'Cadena de palabras',
  changeOne: 'cambiar un sonido',
  changeAny: 'cambiar, añadir o quitar uno',
  chainLength: 'Palabras en una cadena',
  madeUp: names.madeUpWords.es,
  word: 'Palabra',
  anyGoodOne: 'elegir por mí',
  sounds: 'Sonidos',
  words: 'Palabras',
  bySightWords: 'Palabras de reconocimiento visual',
  sentences: 'Oraciones',
  sentencesFrom: 'Oraciones de',
  thePassage: 'el pasaje',
  wordsTheyKnow: 'palabras que pueden leer',
  howManySets: 'Cuántos grupos',
  wordsToChoose: 'Palabras para elegir',
  onTheSheet: 'en la hoja',
  notShown: 'sin mostrar',
  howManySentences: 'Cuántas oraciones',
  betweenPhrases: 'Cortes entre frases',
  aBar: 'una barra',
  aGap: 'un espacio ancho',
  noWordOfPassage:
    'Ninguna palabra legible del pasaje da para conversar. Elija otro pasaje, o elija una palabra.',
  tooFewWords: 'El grupo aún puede leer muy pocas palabras. Elija un pasaje o un paso posterior.',
  noneAlike:
    'El grupo aún no puede leer ningún par de homófonos. Elija un paso posterior o añada palabras de reconocimiento visual.',
  noLetters: 'Aún no se han enseñado letras. Elija el paso del grupo en la página Grupos.',
  nothingToWrite: 'Aún no hay nada que escribir. Elija cuántos sonidos, palabras u oraciones quiere.',
  noWordsToWrite:
    'Este grupo aún no puede escribir palabras. Avance un paso o añada patrones enseñados en la página Grupos.',
  noSentenceYet:
    'El grupo aún puede leer muy pocas palabras para una oración. Inténtelo algunos pasos después o elija un pasaje.',
  nothingYet: 'Aún no se ha enseñado nada. Elija el paso del grupo para ver aquí sus palabras.',
  nothingToBuild:
    'Aún no hay nada que formar. Este grupo puede leer muy pocas palabras con prefijo, sufijo o dos partes.',
  patternsOfStep: 'patrones de este paso',
  anotherPattern: 'elija otro patrón del paso',
  stepLater: 'inténtelo uno o dos pasos después',
};
