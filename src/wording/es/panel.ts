import type { panel as english } from '../en/panel.ts';
import type { Translated } from '../translation.ts';

/** The side panel. */
export const panel: Translated<typeof english> = {
  readingThePage: 'Leyendo la página…',
  notShaded: 'Esta página no está sombreada.',
  shadeThisPage: 'Sombrear esta página',
  openAStory:
    'Abra un cuento en la web y pulse el botón de Wordreach en la barra de herramientas: solo entonces puede leer una página.',
  deference:
    'Wordreach estima lo que se puede descodificar; no evalúa a ningún niño. El programa de su escuela y su propio criterio van por delante.',
  otherLanguage:
    'Esta página dice que está en {language}. Wordreach lee inglés: lo que diga de otras palabras es casualidad.',
  alsoTaught: 'También enseñado',
  alsoTaughtHint: 'Marcado como enseñado antes de su paso; desmárquelo para retirarlo.',
  openDesk: 'Abrir la mesa de trabajo',
  takeToDesk: 'Llevar a la mesa',
  climbAndReport: 'Subida e informe',
  onlyUnderline: 'solo subrayar las palabras de la página',
  group: 'Grupo',
  unreadGroups: {
    one: 'Guardado, pero ilegible para esta versión de Wordreach: {groups}. Actualice la extensión para usarlo.',
    other:
      'Guardados, pero ilegibles para esta versión de Wordreach: {groups}. Actualice la extensión para usarlos.',
  },
  editGroups: 'Editar grupos',
  stepOf: 'Paso {step} de {steps}',
  stepValue: 'Paso {step}: {title}',
  stepTeaches: 'Qué enseña este paso',
  textChecked: 'Texto que se revisa',
  mainStory: 'Cuento principal',
  wholePage: 'Toda la página',
  selection: 'Selección',
  noStory:
    'No se encontró un cuento principal de cierta extensión, así que se revisa toda la página. También puede seleccionar el texto.',
  takenAway:
    'Esta página quita el sombreado una y otra vez. Lleve su texto a la mesa, donde se sombrea igualmente.',
  restless: 'Una parte de esta página cambia sola sin parar; esa parte no se sombrea.',
  foreign: 'No se leyó porque viene de otro sitio: {frames}. Ábralo en su propia pestaña para revisarlo.',
  framePdf: 'No se leyó porque es un PDF: {frames}. Copie su texto y péguelo en la mesa.',
  frameSealed:
    'No se leyó porque esta página lo cierra a las extensiones: {frames}. Copie su texto y péguelo en la mesa.',
  frame: 'una parte de la página',
  mostlySkipped:
    'De este texto se deja fuera más de lo que se cuenta, así que no se muestra ningún porcentaje. Seleccione la parte que quiere revisar o péguela en la mesa.',
  canvas:
    'La mayor parte de esta página es un dibujo y solo se cuentan las palabras de alrededor. Si el dibujo tiene letras, copie su texto y péguelo en la mesa.',
  picture:
    'Una imagen ocupa casi todo lo que se ve. Si tiene palabras, no se cuentan: escríbalas en la mesa.',
  written:
    'La mayoría de las palabras de esta página están en un campo para escribir, que no se lee. Cópielas y péguelas en la mesa.',
  covered:
    'Una parte de este texto está cortada o tapada en la página. La cifra también la cuenta; seleccione lo que ve para revisar solo eso.',
  rows: 'Esta página puede tener más filas de las que muestra a la vez. La cifra es de las filas que están ahora.',
  paid: 'Esta página dice que leerla entera cuesta dinero. Si aquí solo está el comienzo, la cifra es del comienzo.',
  printed: 'Las marcas se imprimen con la página. Pulse otra vez el botón de Wordreach para quitarlas.',
  onShelf: 'Está en la estantería.',
  onShelfAlready: 'Ya estaba en la estantería.',
  putOnShelf: 'Poner en la estantería',
  withText: 'con su texto',
  openShelf: 'Abrir la estantería',
  seeThere: 'Verlo allí',
  theWord: 'La palabra {word}',
  nextPlace: 'siguiente lugar',
  close: 'cerrar',
  stillNeeded: 'aún falta:',
  neededInShort: 'Aún falta: {patterns}.',
  sayInstead: 'palabra que puede decirse en su lugar, en la mesa:',
  noSwap: 'Ninguna sustitución dice lo mismo y puede leerse: enséñela como palabra del cuento o déjela.',
  noTab:
    'No hay ninguna página delante. Abra un cuento y pulse el botón de Wordreach en la barra de herramientas.',
  silentFrames: {
    one: 'Un marco de esta página no respondió, así que sus palabras no se cuentan.',
    other: '{count} marcos de esta página no respondieron, así que sus palabras no se cuentan.',
  },
  failed: 'No se pudo revisar esta página, porque algo falló en Wordreach: {why}',
  unjudged: {
    one: 'No se pudo juzgar una palabra, porque algo falló en Wordreach; cuenta como dudosa.',
    other: 'No se pudieron juzgar {count} palabras, porque algo falló en Wordreach; cuentan como dudosas.',
  },
  unmarked:
    'No se pudieron marcar algunas palabras de esta página, porque algo falló en Wordreach. Las cifras son de todas sus palabras.',
  tryAgain: 'Intentar de nuevo',
  copyDetails: 'Copiar los detalles',
  detailsCopied: 'Copiados. Nombran las palabras, el navegador y el fallo, y nada del grupo.',
  detailsNotCopied: 'El navegador no permitió copiarlos. Son estos:',
  details: 'Detalles del fallo',
  allRead: 'El grupo puede leer todas las palabras de esta página.',
  others: 'Irregulares o dudosas',
  othersHint: 'Palabras que ningún patrón abre: enséñelas a la vista, sustitúyalas o véalas usted.',
};
