import type { panel as english } from '../en/panel.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The texts of the side panel. */
export const panel: Translated<typeof english> = {
  readingThePage: 'Leyendo la página…',
  notShaded: 'Esta página no está sombreada.',
  shadeThisPage: 'Sombrear esta página',
  openAStory:
    'Abra un cuento en la web. Después pulse el botón de Wordreach en la barra de herramientas. Wordreach lee una página solo cuando usted lo pulsa.',
  deference:
    'Wordreach estima qué palabras puede decodificar un grupo. No evalúa a ningún niño. El programa de su escuela y su propio criterio tienen la última palabra.',
  otherLanguage:
    'Esta página dice que está en {language}. Wordreach solo lee inglés, así que sus resultados con otras palabras no son fiables.',
  alsoTaught: names.taughtEarly.es,
  alsoTaughtHint: 'Marcado como enseñado antes de su paso. Desmárquelo para deshacerlo.',
  openDesk: 'Abrir la mesa de trabajo',
  takeToDesk: names.editText.es,
  climbAndReport: names.fullReport.es,
  onlyUnderline: 'Solo subrayado',
  privateMarks: 'Marcas privadas: la página no puede verlas',
  group: 'Grupo',
  unreadGroups: {
    one: 'Esta versión de Wordreach no puede leer este grupo guardado: {groups}. Actualice la extensión para usarlo.',
    other:
      'Esta versión de Wordreach no puede leer estos grupos guardados: {groups}. Actualice la extensión para usarlos.',
  },
  groupChanged: 'Se usa otro grupo.',
  editGroups: 'Editar grupos',
  stepOf: 'Paso {step} de {steps}',
  stepValue: 'Paso {step}: {title}',
  stepTeaches: 'Qué enseña este paso',
  whatIf: 'Probar otro paso',
  trial: 'Esta página se muestra en el paso {step}. {group} sigue en el paso {at}.',
  moveGroup: 'Mover {group} al paso {step}',
  backToStep: 'Volver al paso {step}',
  moved: '{group} pasó al paso {step}.',
  nextSteps: { one: 'Próximos pasos: 1 patrón', other: 'Próximos pasos: {count} patrones' },
  laterSteps: { one: 'Más adelante: 1 patrón', other: 'Más adelante: {count} patrones' },
  notInSequence: { one: 'Fuera de la secuencia: 1 patrón', other: 'Fuera de la secuencia: {count} patrones' },
  textChecked: 'Texto revisado',
  mainStory: 'Cuento',
  wholePage: 'Toda la página',
  selection: 'Selección',
  noStory:
    'No se encontró un cuento principal, así que se revisa toda la página. También puede seleccionar el texto.',
  takenAway: `Esta página quita el sombreado una y otra vez. Pulse «${names.editText.es}» para ver su texto sombreado en la mesa.`,
  restless: 'Una parte de esta página cambia sin parar, así que esa parte no se sombrea.',
  foreign: 'No se leyó porque viene de otro sitio: {frames}. Ábralo en su propia pestaña para revisarlo.',
  framePdf: 'No se leyó porque es un PDF: {frames}. Ábralo en una pestaña y pulse allí el botón.',
  pdf: { one: 'Esto es un PDF de una página.', other: 'Esto es un PDF de {count} páginas.' },
  pdfPictures: {
    one: 'Una página es una imagen. Abra el PDF aquí para que se lea.',
    other: '{count} páginas son imágenes. Abra el PDF aquí para que se lean.',
  },
  pdfOfPictures: 'Sus páginas son imágenes, no texto. Abra el PDF aquí para que se lean.',
  pdfForm: 'Es un formulario. No se lee lo que está escrito en sus campos.',
  openPdfHere: 'Abrirlo aquí',
  openPdfFile: 'Abrir un archivo PDF',
  chosenPages: 'Páginas elegidas',
  frameSealed:
    'No se leyó porque esta página no deja entrar a las extensiones: {frames}. Copie su texto y péguelo en la mesa.',
  frame: 'una parte de la página',
  mostlySkipped:
    'La mayor parte de este texto no se cuenta, así que no se muestra ningún porcentaje. Seleccione la parte que quiere revisar o péguela en la mesa.',
  canvas:
    'La mayor parte de esta página es un dibujo. Solo se cuentan las palabras de alrededor. Si el dibujo tiene palabras, léalas como imagen.',
  picture:
    'Una imagen ocupa casi toda la pantalla. Las palabras de la imagen no se cuentan. Si tiene palabras, léalas como imagen.',
  readScreen: names.readScreen.es,
  scrollOn: 'Se tomó la imagen. Para leer más texto, desplace esta página y pulse otra vez.',
  screenAdded: 'La pantalla se añadió a la página de la imagen. Siga desplazando y pulse otra vez.',
  written:
    'La mayoría de las palabras de esta página están en un campo para escribir, que no se lee. Cópielas y péguelas en la mesa.',
  covered:
    'Una parte de este texto está oculta en la página, pero se cuenta. Para revisar solo lo que ve, selecciónelo.',
  rows: 'Esta página puede mostrar más filas después. El porcentaje es de las filas que se ven ahora.',
  paid: 'Esta página dice que el texto completo cuesta dinero. Si aquí solo está el comienzo, el porcentaje es del comienzo.',
  printed: 'Las marcas se imprimen con la página. Pulse otra vez el botón de Wordreach para quitarlas.',
  onShelf: 'Guardado en la estantería.',
  textKept: 'El texto completo queda ahora en la estantería.',
  onShelfAlready: 'Ya estaba en la estantería.',
  putOnShelf: names.saveToShelf.es,
  withText: 'con texto',
  help: names.help.es,
  openShelf: 'Abrir la estantería',
  seeThere: 'Ver en la estantería',
  theWord: 'La palabra {word}',
  nextPlace: 'siguiente lugar',
  close: 'cerrar',
  stillNeeded: `${names.missingPatterns.es}:`,
  neededInShort: `${names.missingPatterns.es}: {patterns}.`,
  sayInstead: `${names.replacementWords.es}, en la mesa:`,
  noSwap: 'No se encontró ninguna palabra de reemplazo legible. Enseñe esta palabra antes de leer, o déjela.',
  wordInView: 'Palabra actual:',
  noTab:
    'Aquí no hay ninguna página web abierta. Abra un cuento y pulse el botón de Wordreach en la barra de herramientas.',
  silentFrames: {
    one: 'Un marco de esta página no respondió, así que sus palabras no se cuentan.',
    other: '{count} marcos de esta página no respondieron, así que sus palabras no se cuentan.',
  },
  failed: 'No se pudo revisar esta página por un fallo de Wordreach: {why}',
  unjudged: {
    one: 'No se pudo revisar una palabra por un fallo de Wordreach. Cuenta como dudosa.',
    other: 'No se pudieron revisar {count} palabras por un fallo de Wordreach. Cuentan como dudosas.',
  },
  unmarked:
    'No se pudieron marcar algunas palabras de esta página por un fallo de Wordreach. Las cifras las cuentan igualmente.',
  tryAgain: 'Intentar de nuevo',
  copyDetails: 'Copiar los detalles',
  detailsCopied:
    'Copiados. Los detalles nombran las palabras, el navegador y el fallo. No dicen nada del grupo.',
  detailsNotCopied: 'El navegador no permitió copiar. Estos son los detalles:',
  details: 'Detalles del fallo',
  allRead: 'El grupo puede leer todas las palabras de esta página.',
  others: 'Irregulares o dudosas',
  othersHint:
    'Ningún patrón hace legibles estas palabras. Enséñelas como palabras de reconocimiento visual, cámbielas o revíselas usted.',
};
