import type { host as english } from '../en/host.ts';
import type { Translated } from '../translation.ts';

/** The messages of the background script and the storage: menus, errors, and pages that cannot be read. */
export const host: Translated<typeof english> = {
  noAnswer: 'Wordreach no respondió. Inténtelo de nuevo.',
  dataFailed:
    'Wordreach no pudo leer su archivo {file} ({why}). Vuelva a cargar la extensión en la página de extensiones del navegador y pulse el botón otra vez.',
  store:
    'Los navegadores no dejan que las extensiones lean su propia tienda. Abra el cuento en otra pestaña o pegue su texto en la mesa.',
  browserPage: 'Esta página es del propio navegador. Abra un cuento en la web y pulse el botón.',
  pdf: 'Wordreach no puede leer este PDF en su pestaña. Guárdelo y abra el archivo aquí.',
  canvas:
    'Esta página dibuja las letras como una imagen. Wordreach puede leer como imagen la parte que se ve.',
  picture: 'Esta página es sobre todo una imagen. Si muestra palabras, Wordreach puede leerlas.',
  notInFront: 'Ponga la página delante y pulse otra vez.',
  noScreen:
    'El navegador no deja que Wordreach vea esta pantalla. Pulse el botón de Wordreach en la página e inténtelo de nuevo.',
  noPicture: 'El navegador no deja que Wordreach tenga esta imagen. Guárdela y abra el archivo en la mesa.',
  localFile:
    'Esta página es un archivo de su equipo. Ábralo en la mesa, o permita a Wordreach el «acceso a URL de archivo» en los ajustes de extensiones del navegador.',
  readerView: 'Firefox no deja entrar extensiones en su vista de lectura. Salga de ella y pulse el botón.',
  errorPage: 'Esta página no se cargó. Vuelva a cargarla y pulse el botón.',
  emptySelection:
    'No hay palabras que leer en la selección. Seleccione algún texto de la página. El texto de un campo para escribir no se lee.',
  noWords: 'En esta página no hay palabras que leer.',
  laterVersion:
    'Este archivo es de una versión posterior de Wordreach. Actualice la extensión y ábralo de nuevo.',
  cutOff:
    'Este archivo está incompleto: tiene {found} de {expected} partes. Guárdelo de nuevo donde se hizo.',
  shelfCutOff:
    'Este archivo está incompleto: tiene {found} de {expected} textos. Guárdelo de nuevo donde se hizo.',
  notEverything: 'Este archivo no lo contiene todo. Elija uno guardado con «Guardarlo todo».',
  lineOfFile: 'El renglón {number}',
  passageOfFile: 'El pasaje {number}',
  textOfFile: 'El texto {number}',
  damaged: '{where} de este archivo está dañado. Guarde el archivo de nuevo donde se hizo.',
  damagedNothingTaken:
    '{where} de este archivo está dañado, así que no se añadió nada. Guarde el archivo de nuevo donde se hizo.',
  noPassages: 'Este archivo no contiene pasajes. Elija uno guardado en la mesa.',
  noShelf: 'Este archivo no contiene una estantería. Elija uno guardado en esta página.',
  tooLarge: 'Este archivo pasa de 1 MB, así que no es de Wordreach. Elija uno guardado en esta página.',
  otherFile: 'Este archivo no es de Wordreach. Elija uno guardado en esta página.',
  newerWordreach:
    'Este archivo es de una versión más nueva de Wordreach. Actualice la extensión y ábralo de nuevo.',
  unknownPart:
    'Wordreach no conoce una parte de este archivo («{part}»). Guarde el archivo de nuevo donde se hizo.',
  nothingInFile: 'En este archivo no hay ningún grupo ni secuencia.',
  noJson: 'Este archivo está dañado o incompleto. Elija uno guardado en esta página o guárdelo de nuevo.',
  groupsNoList: 'Los grupos de este archivo están dañados. Guarde el archivo de nuevo donde se hizo.',
  sequencesNoList: 'Las secuencias de este archivo están dañadas. Guarde el archivo de nuevo donde se hizo.',
  fileUnusable: 'El archivo no puede usarse: {why}',
  repeatedId:
    'Dos secuencias de este archivo tienen el mismo identificador, «{id}». Cambie uno de ellos y abra el archivo de nuevo.',
  otherWindow: '{title} (otra ventana)',
  thisBrowser: '{name} (este navegador)',
  passageFull:
    'No se guardó: el almacenamiento del navegador está lleno. Guarde sus pasajes en un archivo y borre algunos.',
  passageFailed:
    'No se guardó porque el navegador no pudo almacenarlo ({why}). Deje esta ventana abierta, copie su texto e inténtelo de nuevo.',
  shelfFull:
    'El texto no se guardó: el almacenamiento del navegador está lleno. Guarde la estantería en un archivo y borre algunos textos.',
  shelfFailed:
    'No se pudo abrir la estantería, porque el navegador no pudo leerla o guardarla ({why}). No se cambió nada. Inténtelo de nuevo.',
  passageUnread:
    'Un pasaje no se muestra porque está dañado o es de una versión posterior de Wordreach. Se conserva. Actualice la extensión para usarlo.',
  shelfTextUnread:
    'Un texto de la estantería no se muestra porque está dañado o es de una versión posterior de Wordreach. Se conserva. Actualice la extensión para usarlo.',
  noModel: 'Este navegador no tiene un modelo de lenguaje propio.',
  modelFull:
    'Esta oración es demasiado larga para el modelo de lenguaje del navegador. Divídala en dos e inténtelo de nuevo.',
  modelLanguage: 'El modelo de lenguaje del navegador no sabe inglés. Todo lo demás funciona sin él.',
  modelNotAllowed:
    'El navegador no permite aquí su modelo de lenguaje. Permítalo en los ajustes del navegador e inténtelo de nuevo.',
  modelNotDownloaded:
    'El navegador no pudo descargar su modelo de lenguaje. Compruebe la conexión y el espacio en disco e inténtelo de nuevo.',
  modelFailed:
    'El modelo de lenguaje del navegador dio un error ({why}). Su texto no ha cambiado. Inténtelo de nuevo.',
  storageFull:
    'No se guardó: el almacenamiento del navegador para Wordreach está lleno. Guarde sus grupos en un archivo y borre las secuencias que ya no use.',
  storageUnread:
    'No se pueden leer los grupos, las secuencias ni las lecciones, porque el navegador lo rechaza ({why}). No se cambió nada. Cierre el navegador y vuelva a abrirlo. Los pasajes y la estantería se guardan aparte.',
  storageFailed:
    'No se guardó porque el navegador no pudo almacenarlo ({why}). No se cambió nada. Inténtelo de nuevo.',
};
