import type { welcome as english } from '../en/welcome.ts';
import { names } from '../names.ts';
import type { Translated } from '../translation.ts';

/** The texts of the first page after installation, and of the practice page that follows. */
export const welcome: Translated<typeof english> = {
  title: 'Bienvenida',
  headline: 'Prepare su primer grupo',
  lead: 'Wordreach sombrea las palabras de una página web que un grupo aún no puede decodificar. Antes necesita saber qué patrones se le han enseñado. Le llevará un minuto.',
  skip: 'Saltar este paso: ver un ejemplo',
  stepSequence: '¿Qué enseña y en qué orden?',
  sequenceHint: 'Elija la secuencia más cercana al programa de su escuela. Después podrá cambiar cada paso.',
  steps: { one: 'un paso', other: '{count} pasos' },
  begins: 'paso 1: {what}',
  yours: 'propia',
  school: 'de su escuela',
  pasteOwn: 'Pegar la secuencia de su escuela',
  pasteHint: 'Se abre en otra pestaña. Cuando la guarde, podrá elegirla aquí.',
  stepGroup: '¿Quién lee y hasta dónde ha llegado?',
  groupName: 'Nombre del grupo',
  groupNameShown: 'Garzas',
  taughtThrough: names.lastStepTaught.es,
  whichWords: '¿Cuáles de estas palabras puede leer la mayoría del grupo?',
  whichHint: 'Elija la última fila de la que lee todas o casi todas las palabras sin ayuda.',
  makingRows: 'Preparando filas de palabras…',
  noneYet: 'todavía ninguna',
  orStep: 'O, en vez de una fila: último paso enseñado',
  chooseStep: 'Elija un paso',
  stepMissing: 'Primero elija la última fila de palabras que el grupo puede leer, o el último paso enseñado.',
  taughtNow: 'Se enseña ahora: {what}',
  stepTry: 'Pruébelo con un cuento',
  tryHint: 'Su grupo se guarda en este navegador. Después se abre un cuento corto para practicar.',
  stillToDo: 'Falta: {what}',
  toDoName: 'nombre del grupo',
  toDoStep: 'fila de palabras o paso',
  keepAndTry: 'Guardar el grupo y abrir el cuento',
  nameMissing: 'Primero dé un nombre al grupo.',
  failed: 'El grupo no se guardó: {why}',
  guide: 'Cómo funciona',
  guideShade:
    'Abra cualquier cuento o noticia y pulse el botón de Wordreach en la barra de herramientas. Wordreach sombrea las palabras que el grupo aún no puede decodificar. No cambia la página.',
  guidePanel:
    'El panel lateral muestra cuánto del texto es legible y qué patrones faltan. Primero van los patrones que se enseñan a continuación.',
  guideWord:
    'Deje el puntero sobre una palabra sombreada para ver sus grafías y sonidos, los patrones que le faltan y palabras de reemplazo.',
  guideDesk: `Pulse «${names.editText.es}» para adaptar el texto mientras Wordreach lo sombrea; después imprímalo. La página Lección prepara el resto de la hoja del día.`,
  guideDeference:
    'Wordreach estima qué palabras se pueden decodificar. No evalúa a ningún niño. El programa de su escuela, sus especialistas en lectura y su propio criterio tienen la última palabra.',
  practiceTitle: 'Página de práctica',
  practicePress: 'Ahora pulse el botón de Wordreach en la barra de herramientas.',
  practiceShortcut: 'O pulse las teclas {shortcut}.',
  practicePin: 'Si no ve el botón, abra el menú de extensiones (la pieza de puzle) y fije Wordreach.',
  practiceShaded:
    'Muy bien. Deje el puntero sobre una palabra sombreada o vaya de una a otra en el panel. Pulse el botón otra vez para quitar el sombreado.',
  practiceThen: 'Funciona así en cualquier página web.',
  practiceGroups: 'Cambiar el grupo',
};
