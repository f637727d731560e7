/**
 * A name that a teacher reads on screen, in each language, with the former names that it replaced. No text contains a
 * former name (`tests/wording-names.test.ts`).
 */
interface ScreenName {
  readonly en: string;
  readonly es: string;
  /** Former names, as regular expressions for whole words. Upper and lower case are treated alike. */
  readonly was: { readonly en?: readonly string[]; readonly es?: readonly string[] };
}

/**
 * The names of things on screen. The same thing has the same name on every screen, in help, in the reports of the
 * commands and in the readme.
 */
export const names = {
  readable: { en: 'readable', es: 'legible', was: { en: ['reach(?:es|ed)?'], es: ['cobertura'] } },
  readableByStep: {
    en: 'Readable by step',
    es: 'Legible por paso',
    was: { en: ['climbs?'], es: ['subidas?'] },
  },
  fullReport: { en: 'Full report', es: 'Informe completo', was: {} },
  missingPatterns: {
    en: 'Missing patterns',
    es: 'Patrones que faltan',
    was: {
      en: ['gaps?', 'still needed', 'opens? (?:\\{count\\}|\\d+|one|most|no)', 'opened by', 'open words'],
      es: ['aún falta', 'aún hace falta', 'abren? (?:\\{count\\}|\\d+|más|palabras?)', 'abiertas? por'],
    },
  },
  replacementWords: {
    en: 'Replacement words',
    es: 'Palabras de reemplazo',
    was: {
      en: ['swaps?', 'words? to say instead', 'stand in its place'],
      es: ['sustitución', 'sustituciones'],
    },
  },
  wordsToPreTeach: {
    en: 'Words to pre-teach',
    es: 'Palabras para enseñar antes',
    was: { en: ['story words?'], es: ['palabras? del (?:pasaje|cuento)'] },
  },
  markAsTaught: { en: 'Mark as taught', es: 'Marcar como enseñado', was: { en: ['teach this pattern'] } },
  countsAs: { en: 'Counts as', es: 'Cuenta como', was: {} },
  ignored: { en: 'ignored', es: 'omitida', was: { en: ['not a word'], es: ['no es palabra'] } },
  bySightWord: {
    en: 'by-sight word',
    es: 'palabra de reconocimiento visual',
    was: {
      en: ['(?:as )?(?:a )?whole words?', 'by sight', 'as wholes'],
      es: ['palabras? enteras?', 'a la vista', 'de vista'],
    },
  },
  irregularPart: { en: 'irregular part', es: 'parte irregular', was: {} },
  lastStepTaught: {
    en: 'Last step taught',
    es: 'Último paso enseñado',
    was: { en: ['taught through'], es: ['enseñado hasta'] },
  },
  taughtEarly: {
    en: 'Taught early',
    es: 'Enseñado antes',
    was: { en: ['also taught', 'out of turn'], es: ['también enseñado', 'fuera de orden'] },
  },
  notSecure: {
    en: 'Taught but not secure',
    es: 'Enseñado, sin consolidar',
    was: { en: ['after all'], es: ['a pesar de todo'] },
  },
  exceptions: {
    en: 'Exceptions for this group',
    es: 'Excepciones de este grupo',
    was: { en: ['besides the steps'], es: ['además de los pasos'] },
  },
  schwa: {
    en: 'schwa',
    es: 'schwa',
    was: { en: ['weak(?:ly)?'], es: ['débil(?:es)?'] },
  },
  silentLetter: { en: 'silent', es: 'muda', was: { en: ['quiet (?:letters?|e)'] } },
  contractions: { en: 'contractions', es: 'contracciones', was: { en: ['short forms?'] } },
  decodingRules: {
    en: 'Decoding rules',
    es: 'Reglas de decodificación',
    was: { en: ['how words are judged'], es: ['se juzgan'] },
  },
  inUse: { en: 'in use', es: 'en uso', was: { en: ['checked for (?:it|this group)'] } },
  useThisGroup: { en: 'Use this group', es: 'Usar este grupo', was: { en: ['check pages for'] } },
  editText: {
    en: 'Edit this text',
    es: 'Editar este texto',
    was: { en: ['take .{0,12}to the desk'], es: ['(?:llevar|lleve) .{0,12}a la mesa'] },
  },
  newPassage: {
    en: 'New passage',
    es: 'Pasaje nuevo',
    was: { en: ['on the desk'], es: ['en la mesa un texto'] },
  },
  compareWith: { en: 'compare with', es: 'comparar con', was: {} },
  flagLongSentences: {
    en: 'Flag long sentences',
    es: 'Señalar oraciones largas',
    was: { en: ['mark sentences over'] },
  },
  saveToShelf: {
    en: 'Save to shelf',
    es: 'Guardar en la estantería',
    was: {
      en: ['puts? .{0,12}on the shelf', 'shelved'],
      es: ['pon(?:er|ga)(?:lo)? .{0,12}en la estantería'],
    },
  },
  keepFullText: {
    en: 'keep full text',
    es: 'guardar texto completo',
    was: { en: ['with its text'], es: ['con su texto'] },
  },
  wordListOnly: {
    en: 'word list only',
    es: 'solo lista de palabras',
    was: { en: ['its words only'], es: ['solo sus palabras'] },
  },
  readyNow: {
    en: 'ready now',
    es: 'listo ahora',
    was: {
      en: ['reads (?:now|after|within|later|from)', 'now reads?'],
      es: ['se leen? (?:ahora|tras|desde|después)'],
    },
  },
  textsByGroup: {
    en: 'Texts by group',
    es: 'Textos por grupo',
    was: { en: ['which text for whom'], es: ['qué texto para quién'] },
  },
  dismiss: { en: 'Dismiss', es: 'Descartar', was: { en: ['put away'], es: ['retirar'] } },
  homophones: {
    en: 'Homophones',
    es: 'Homófonos',
    was: { en: ['(?:words )?said alike'], es: ['que suenan igual'] },
  },
  phrases: {
    en: 'Phrases',
    es: 'Lectura por frases',
    was: { en: ['smooth reading'], es: ['lectura fluida'] },
  },
  letterSoundReview: {
    en: 'Letter-sound review',
    es: 'Repaso de letras y sonidos',
    was: {},
  },
  madeUpWords: { en: 'Made-up words', es: 'Palabras inventadas', was: {} },
  version: { en: 'Version', es: 'Versión', was: { en: ['sheet number'], es: ['número de hoja'] } },
  shuffle: {
    en: 'Shuffle',
    es: 'Mezclar',
    was: { en: ['make again', 'made again'], es: ['hacer otra vez'] },
  },
  shuffleAll: { en: 'Shuffle all', es: 'Mezclar todo', was: { en: ['new sheet'], es: ['hoja nueva'] } },
  notYetDecodable: {
    en: 'not yet decodable',
    es: 'aún no decodificable',
    was: { en: ['beyond'], es: ['descodific\\w+', 'ilegibles?'] },
  },
  readScreen: { en: 'Read this screen', es: 'Leer esta pantalla', was: {} },
  help: { en: 'Help', es: 'Ayuda', was: {} },
} as const satisfies Readonly<Record<string, ScreenName>>;

/**
 * Unclear phrases, and second names for a thing that already has a name. No text of the interface contains any of
 * these.
 */
export const avoided = {
  en: [
    'not told here',
    'by now',
    'those (?:of|that)',
    'what is',
    'guide',
    'from memory',
    'so that it',
    'after all',
  ],
  es: ['que aquí no se dicen?', 'a estas alturas', 'de memoria', 'dondequiera', 'guía'],
} as const;
