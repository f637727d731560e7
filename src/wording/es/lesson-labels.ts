import type { lessonLabels as english } from '../en/lesson-labels.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The names of the parts and choices in `src/lesson`. A test checks that the English names match. */
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
  newPattern: 'Patrón nuevo',
  wordSort: 'Clasificar palabras',
  syllableDivision: 'División en sílabas',
  stepCheck: 'Comprobación de fin de paso',
  readIt: 'Lectura en voz alta',
  cards: 'Tarjetas para recortar',
  homeSheet: 'Hoja para casa',
  wordsToSort: 'Palabras para clasificar',
  sound: 'Sonido',
  spellings: 'Grafías',
  pupilsInRecord: 'Alumnos en el registro de la clase',
  cardsWith: 'Tarjetas con',
  cardsOfWords: 'palabras',
  cardsOfLetters: 'letras',
  cardsOfSyllables: 'sílabas',
  cardsOnPage: 'Tarjetas por página',
  pages: 'Páginas',
  language: 'Idioma',
  english: 'inglés',
  spanish: 'español',
  englishAndSpanish: 'inglés y español',
  kindsOfLists: 'Clases de listas',
  allKinds: 'listas, pares, cadenas',
  oneList: 'una lista',
  onePage: 'Una lección en una página',
  useReview: 'Los alumnos dicen el sonido de cada tarjeta y después las formas de escribir un sonido.',
  useBuilding: 'Los alumnos forman palabras con una base y una terminación, y dicen cómo cambia la grafía.',
  useLists: 'Los alumnos leen palabras, pares, cadenas y palabras inventadas con el patrón.',
  useVocabulary: 'Conversen sobre una palabra: sus partes, su significado, una oración.',
  useDictation: 'Diga sonidos, palabras y oraciones, y los alumnos los escriben.',
  useHomophones: 'Los alumnos eligen la palabra que va con cada pista.',
  usePhrases: 'Los alumnos leen oraciones frase por frase y después con fluidez.',
  useNewPattern:
    'Enseñe el patrón de hoy: diga la regla, y los alumnos separan las palabras que lo tienen de las que no.',
  useWordSort: 'Los alumnos leen palabras mezcladas y escriben cada una bajo su grafía de un sonido.',
  useBySight:
    'Relacione los sonidos de cada palabra con sus letras, marque la parte que hay que memorizar, y los alumnos la escriben y la buscan.',
  useDivision:
    'Los alumnos dividen palabras largas y marcan sus vocales; su clave tiene las marcas del diccionario.',
  useCheck:
    'Un alumno a la vez lee en voz alta, y usted anota los puntos en el registro de la clase de su clave.',
  useReadIt:
    'Un alumno lee el pasaje en voz alta mientras usted marca dónde acaba un minuto y cuenta los errores.',
  useCards:
    'Imprima letras, palabras o sílabas de la lección como tarjetas para clasificar, emparejar o formar palabras.',
  useHome:
    'Envíe a casa media página en palabras sencillas, en inglés o español, para quien lee con el niño o la niña.',
  noPatternWords:
    'El grupo puede leer muy pocas palabras con los patrones de este paso. Inténtelo uno o dos pasos después.',
  noSort: 'Ningún sonido tiene aún dos grafías que el grupo pueda leer. Inténtelo uno o dos pasos después.',
  noBySight:
    'Este grupo aún no tiene palabras de reconocimiento visual. Añádalas en la página Grupos o elija un paso posterior.',
  noLongWords:
    'El grupo aún puede leer muy pocas palabras de dos sílabas. Ponga esta parte en la hoja algunos pasos después.',
  noCheck:
    'El grupo aún puede leer muy pocas palabras para una comprobación. Elija un paso posterior en la página Grupos.',
  noPassageToRead: 'Elija un pasaje para imprimirlo grande con la cuenta de sus palabras.',
  passageTooHard:
    'El grupo aún no puede leer lo suficiente de este pasaje. Reemplace algunas de sus palabras o elija otro pasaje.',
  noSyllableCards:
    'Muy pocas palabras de dos sílabas tienen los patrones de este paso. Elija letras o palabras para las tarjetas.',
  noCards: 'Aún no hay nada para las tarjetas. Elija el paso del grupo en la página Grupos.',
  noHomeSheet:
    'El grupo aún puede leer muy pocas palabras para una hoja para casa. Elija un paso posterior en la página Grupos.',
  spacedReview: 'Repaso espaciado',
  useSpacedReview:
    'Los alumnos leen palabras de hojas anteriores que vuelven tras un día, tres, una semana, dos semanas o un mes.',
  noEarlierSheet:
    'Aún no se imprimió ni guardó ninguna hoja de este grupo. Sus palabras vuelven aquí desde el día siguiente.',
  nothingDue:
    'Hoy no toca repasar nada. Las palabras de hojas anteriores vuelven tras un día, tres, una semana, dos semanas y un mes.',
};
