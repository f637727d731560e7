import type { host as english } from '../en/host.ts';
import type { Translated } from '../translation.ts';

/** What the background and the storage say: menus, faults, pages that cannot be read. */
export const host: Translated<typeof english> = {
  noAnswer: 'Wordreach no respondió. Inténtelo de nuevo.',
  dataFailed:
    'No se pudo leer el archivo {file} de la extensión ({why}). Vuelva a cargar la extensión en la página de extensiones del navegador y pulse el botón otra vez.',
  store:
    'Los navegadores no dejan entrar extensiones en su propia tienda. Abra el cuento en otra pestaña o pegue su texto en la mesa.',
  browserPage: 'Esta página es del propio navegador. Abra un cuento en la web y pulse el botón.',
  pdf: 'Esto es un PDF, que el navegador muestra con su propio visor. Copie su texto y péguelo en la mesa.',
  canvas:
    'Esta página dibuja las letras como imagen, como hacen algunos editores. Copie el texto y péguelo en la mesa.',
  picture:
    'Esta página es sobre todo una imagen, y el texto de una imagen no puede leerse. Escríbalo en la mesa.',
  localFile:
    'Esta página es un archivo de su equipo. Ábralo en la mesa, o permita a Wordreach el «acceso a URL de archivo» en los ajustes de extensiones del navegador.',
  readerView: 'Firefox no deja entrar extensiones en su vista de lectura. Salga de ella y pulse el botón.',
  errorPage: 'Esta página no se cargó. Vuelva a cargarla y pulse el botón.',
  emptySelection:
    'No hay palabras que leer en la selección. Seleccione algún texto de la página; lo que está en un campo para escribir no se lee.',
  noWords: 'En esta página no hay palabras que leer.',
  laterVersion:
    'Este archivo es de una versión posterior de Wordreach. Actualice la extensión y ábralo de nuevo.',
  cutOff:
    'Este archivo debería tener {expected} partes pero tiene {found}: quedó cortado. Guárdelo de nuevo donde se hizo.',
  shelfCutOff:
    'Este archivo debería tener {expected} textos pero tiene {found}: quedó cortado. Guárdelo de nuevo donde se hizo.',
  notEverything: 'Este archivo no lo contiene todo. Elija uno guardado desde esta página.',
  lineOfFile: 'La línea {number}',
  passageOfFile: 'El pasaje {number}',
  textOfFile: 'El texto {number}',
  damaged: '{where} de este archivo no es válido. Guarde el archivo de nuevo donde se hizo.',
  damagedNothingTaken:
    '{where} de este archivo no es válido, así que no se tomó nada. Guarde el archivo de nuevo donde se hizo.',
  noPassages: 'Este archivo no es de pasajes. Elija uno guardado en la mesa.',
  noShelf: 'Este archivo no es de una estantería. Elija uno guardado desde esta página.',
  tooLarge:
    'Este archivo pasa de 1 MB, y ningún archivo de Wordreach es tan grande. Elija el que se guardó desde esta página.',
  otherFile: 'Este archivo no es de Wordreach. Elija uno guardado desde esta página.',
  newerWordreach:
    'Este archivo lo escribió un Wordreach más nuevo. Actualice la extensión y ábralo de nuevo.',
  unknownPart:
    'El archivo tiene una parte que Wordreach no conoce («{part}»). Guárdelo de nuevo donde se hizo.',
  nothingInFile: 'En este archivo no hay ningún grupo ni secuencia.',
  noJson:
    'Este archivo no es JSON o quedó cortado. Elija uno guardado desde esta página o guárdelo de nuevo.',
  groupsNoList: 'Los grupos de este archivo no son una lista. Guárdelo de nuevo donde se hizo.',
  sequencesNoList: 'Las secuencias de este archivo no son una lista. Guárdelo de nuevo donde se hizo.',
  fileUnusable: 'El archivo no puede usarse: {why}',
  repeatedId:
    'Dos secuencias de este archivo tienen el identificador «{id}». Dé otro a una de ellas y ábralo de nuevo.',
  otherWindow: '{title} (otra ventana)',
  thisBrowser: '{name} (este navegador)',
  passageFull:
    'No se guardó: el espacio del navegador está lleno. Guarde sus pasajes en un archivo y borre los que ya no necesite.',
  passageFailed:
    'No se guardó porque el navegador no pudo almacenarlo ({why}). Deje esta ventana abierta, copie su texto e inténtelo de nuevo.',
  shelfFull:
    'La estantería no pudo guardarlo: el espacio del navegador está lleno. Guarde la estantería en un archivo y borre los textos que ya no necesite.',
  shelfFailed:
    'No se pudo acceder a la estantería porque el navegador no pudo leerla o guardarla ({why}). Lo que había no ha cambiado; inténtelo de nuevo.',
  storageFull:
    'No se guardó: el espacio del navegador para Wordreach está lleno. Guarde sus grupos en un archivo y borre las secuencias que ya no use.',
  storageUnread:
    'No se pueden leer los grupos, las secuencias ni las lecciones, porque el navegador lo rechaza ({why}). Nada ha cambiado. Cierre el navegador y vuelva a abrirlo; los pasajes y la estantería se guardan aparte.',
  storageFailed:
    'No se guardó porque el navegador no pudo almacenarlo ({why}). Lo que había no ha cambiado; inténtelo de nuevo.',
};
