/** The texts of a home sheet for whoever reads with the child; {spellings}, {letters} and {word} are filled in. */
export interface HomeTexts {
  readonly title: string;
  readonly about: string;
  readonly aboutSeveral: string;
  readonly aboutMany: string;
  readonly aboutWords: string;
  readonly aboutLonger: string;
  readonly apostrophe: string;
  readonly spelling: string;
  readonly silent: string;
  readonly and: string;
  readonly read: string;
  readonly bySight: string;
  readonly how: readonly string[];
  readonly thanks: string;
}

/** The texts in plain words, for people who are not teachers. */
export const homeTexts: Readonly<Record<'en' | 'es', HomeTexts>> = {
  en: {
    title: 'For whoever reads with the child',
    about: 'In class we are learning the spelling {spellings}.',
    aboutSeveral: 'In class we are learning the spellings {spellings}.',
    aboutMany: 'In class we are learning new spellings, such as {spellings}.',
    apostrophe: 'We also read words with an apostrophe, such as {word}.',
    spelling: '“{letters}”, as in {word}',
    silent: 'silent “{letters}”, as in {word}',
    and: 'and',
    aboutWords: 'In class we are learning to read words like {word}.',
    aboutLonger: 'In class we are learning to read longer words, such as {word}.',
    read: 'Words to read together',
    bySight: 'Words to know at a glance',
    how: [
      'Point to a word. Let the child say the sounds and then the word.',
      'If a word is hard, say it together and go on.',
      'For a word to know at a glance, say it, spell it aloud, say it again.',
      'Five minutes is enough. Stop while it is still fun.',
    ],
    thanks: 'Thank you for reading together.',
  },
  es: {
    title: 'Para quien lee con el niño o la niña',
    about: 'En clase aprendemos la grafía inglesa {spellings}.',
    aboutSeveral: 'En clase aprendemos las grafías inglesas {spellings}.',
    aboutMany: 'En clase aprendemos nuevas grafías inglesas, como {spellings}.',
    apostrophe: 'También leemos palabras con apóstrofo, como {word}.',
    spelling: '«{letters}», como en {word}',
    silent: '«{letters}» muda, como en {word}',
    and: 'y',
    aboutWords: 'En clase aprendemos a leer palabras inglesas como {word}.',
    aboutLonger: 'En clase aprendemos a leer palabras inglesas más largas, como {word}.',
    read: 'Palabras para leer juntos',
    bySight: 'Palabras para reconocer de un vistazo',
    how: [
      'Señale una palabra. Deje que diga los sonidos y después la palabra.',
      'Si una palabra es difícil, dígala con el niño o la niña y siga.',
      'Para las palabras de un vistazo: dígala, deletréela en voz alta y dígala otra vez.',
      'Con cinco minutos basta. Pare mientras todavía es divertido.',
    ],
    thanks: 'Gracias por leer juntos. Puede ayudar en su idioma: hablar de las palabras también sirve.',
  },
};
