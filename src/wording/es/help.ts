import type { help as english } from '../en/help.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The texts of the Help page. */
export const help: Translated<typeof english> = {
  title: names.help.es,
  contents: 'En esta página',
  marks: 'Las marcas',
  marksLead:
    'Pulse el botón de Wordreach en una página. Aparecen estas marcas. Las líneas y los rótulos dicen lo mismo que los colores.',
  notCounted: 'Los nombres, los números y las direcciones no se cuentan ni se marcan.',
  word: 'Una palabra, por partes',
  wordLead:
    'Ponga el puntero sobre una palabra marcada, o pulse Alt y haga clic en cualquier palabra. La tarjeta muestra sus grafías con sus sonidos, su base y sus terminaciones, los patrones que faltan y las palabras de reemplazo.',
  wordCounts: `«${names.countsAs.es}» cambia cómo cuenta la palabra para este grupo; puede deshacerlo. «${names.markAsTaught.es}» marca un solo patrón.`,
  figure: 'Un buen porcentaje',
  figureLead:
    'El porcentaje indica cuántas palabras del texto puede leer el grupo. Lo usual es 95% para leer con ayuda y 99% para leer sin ayuda (E. A. Betts, Foundations of Reading Instruction, 1946). Con menos de 95%, lea el texto en voz alta, edítelo o guárdelo para un paso posterior.',
  terms: 'Términos',
  keys: 'Atajos de teclado',
  keysLead:
    'Estas son las teclas como las tiene su navegador ahora. Cámbielas en su página de atajos de extensiones.',
  keyButton: 'Sombrear la página o quitar el sombreado',
  keyNext: 'Ir a la siguiente palabra que todavía no se puede decodificar',
  keyPrevious: 'Ir a la palabra anterior',
  keyDesk: 'Abrir la mesa de trabajo',
  keyCard: 'Abrir la tarjeta de una palabra',
  keyClose: 'Cerrar la tarjeta',
  keyNone: 'sin asignar',
  altClick: 'Alt + clic',
  escape: 'Escape',
  settings: 'Grupos y ajustes',
  settingGroup:
    'Otro grupo: en el panel, abra la línea con el nombre del grupo y elija uno, o pulse «Usar este grupo» en la página Grupos.',
  settingStep:
    'El paso de un grupo: en el panel, abra la línea con el nombre del grupo, o en la página Grupos.',
  settingRules: `Cómo se decodifican las palabras, por ejemplo los grupos de consonantes y la schwa: «${names.decodingRules.es}», en el mismo lugar.`,
  settingLook: 'Subrayado sin color: «Solo subrayado», al final del panel.',
  settingPrivate: 'Marcas que la página no puede ver: «Marcas privadas», en el mismo lugar.',
  settingWords:
    'Palabras de reconocimiento visual, nombres y palabras omitidas de un grupo: en la página Grupos.',
  settingSequence: 'Los pasos y su orden: «Secuencias», en la página Grupos. Puede pegar la suya.',
  settingKeep: `«${names.keepFullText.es}» o «con texto»: la estantería guarda el texto mismo, para poder editarlo después. Sin eso, guarda solo su lista de palabras.`,
  cannot: 'Texto que Wordreach no puede leer',
  cannotPdf:
    'Un PDF con contraseña, de más de 300 páginas o de más de 25 MB. En Firefox, cualquier PDF en una pestaña: guárdelo y abra el archivo.',
  cannotDrawn: `Texto dibujado: abra una imagen en la mesa, elija «Leer esta imagen» en el menú de una imagen, o pulse «${names.readScreen.es}» en el panel. La letra manuscrita, las fotos torcidas y la letra muy pequeña no se leen bien, así que revise las palabras con recuadro de puntos.`,
  cannotFrame: 'Una parte de otro sitio: ábrala en su propia pestaña.',
  cannotField: 'Texto en un campo para escribir: cópielo y péguelo en la mesa.',
  cannotBrowser: 'Páginas del navegador y de su tienda: el navegador no permite extensiones ahí.',
  cannotLanguage: 'Otros idiomas: Wordreach solo lee inglés.',
  trouble: 'Si algo va mal',
  troubleButton: 'No ve el botón: abra el menú de extensiones (la pieza de rompecabezas) y fije Wordreach.',
  troubleShare:
    'El porcentaje parece equivocado: mire qué texto se revisa (cuento principal, toda la página o selección) y lea la nota que está encima del porcentaje, si hay alguna.',
  troubleWord:
    'Una palabra está mal clasificada: elija en su tarjeta cómo cuenta. Las palabras dudosas, revíselas usted.',
  troubleStuck: 'No ocurre nada al pulsar: recargue la página y pulse otra vez el botón.',
  troubleDetails:
    'Para avisar de un fallo, copie estos detalles. Indican la versión y el navegador, nada de sus grupos.',
  copy: 'Copiar detalles',
  copied: 'Copiado.',
  notCopied: 'El navegador no permitió copiar. Estos son los detalles:',
  firstSteps: 'Primeros pasos, con imágenes',
  practice: 'Practicar con un cuento',
  privacy: 'Privacidad',
  deference:
    'Wordreach estima qué palabras se pueden decodificar. No evalúa a ningún niño. El programa de su escuela, sus especialistas en lectura y su propio criterio tienen la última palabra.',
};
