import type { welcome as english } from '../en/welcome.ts';
import type { Translated } from '../translation.ts';

/** The first page after installing, and the practice page it leads to. */
export const welcome: Translated<typeof english> = {
  title: 'Bienvenida',
  headline: 'Tres pasos cortos y su primera página',
  lead: 'Wordreach sombrea las palabras de una página web que un grupo aún no puede descodificar. Para eso necesita saber qué se le ha enseñado.',
  skip: 'Omitir esto y explorar con los dos grupos de ejemplo',
  stepSequence: '¿Qué enseña y en qué orden?',
  sequenceHint: 'Elija la más cercana al programa de su escuela; después podrá adaptar cada paso.',
  steps: { one: 'un paso', other: '{count} pasos' },
  begins: 'empieza con {what}',
  yours: 'propia',
  school: 'de su escuela',
  pasteOwn: 'Pegar su propio alcance y secuencia',
  pasteHint: 'Se abre al lado de esta página y aparece aquí en cuanto la guarde.',
  stepGroup: '¿Quién lee y hasta dónde ha llegado?',
  groupName: 'Nombre del grupo',
  groupNameShown: 'Garzas',
  taughtThrough: 'Enseñado hasta',
  taughtNow: 'Se enseña ahora: {what}',
  stepTry: 'Pruébelo con un cuento',
  tryHint: 'Su grupo se guarda en este navegador y se abre un cuento corto para practicar.',
  keepAndTry: 'Guardar el grupo y abrir el cuento',
  nameMissing: 'Primero dé un nombre al grupo.',
  failed: 'El grupo no se guardó: {why}',
  guide: 'En dos minutos',
  guideShade:
    'Abra cualquier cuento o noticia y pulse el botón de Wordreach en la barra de herramientas. Se sombrean las palabras que el grupo aún no puede descodificar; la página no cambia.',
  guidePanel:
    'El panel de al lado dice cuánto puede leer el grupo y qué patrones faltan, primero los que más abren de la página.',
  guideWord:
    'Deje el puntero sobre una palabra sombreada: sus grafías y sonidos, lo que aún falta y una palabra que puede decirse en su lugar.',
  guideDesk:
    'Lleve el texto a la mesa de trabajo, adáptelo mientras el sombreado le sigue e imprímalo. La página de la lección prepara el resto de la hoja del día con lo ya enseñado.',
  guideDeference:
    'Wordreach estima; no evalúa a ningún niño. El programa de su escuela, sus especialistas en lectura y su propio criterio van por delante.',
  practiceTitle: 'Página de práctica',
  practicePress: 'Ahora pulse el botón de Wordreach en la barra de herramientas.',
  practiceShortcut: 'O pulse las teclas {shortcut}.',
  practicePin: 'Si el botón no está, abra el menú de extensiones (la pieza de puzle) y fije Wordreach.',
  practiceShaded:
    'Ya está. Deje el puntero sobre una palabra sombreada o vaya de una a otra en el panel. Si pulsa otra vez, desaparece todo.',
  practiceThen: 'Así funciona en cualquier página de la web.',
  practiceGroups: 'Cambiar el grupo',
};
