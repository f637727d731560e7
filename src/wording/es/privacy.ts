import type { privacy as english } from '../en/privacy.ts';
import type { Translated } from '../translation.ts';

/** What becomes of what the teacher reads and keeps. */
export const privacy: Translated<typeof english> = {
  title: 'Privacidad',
  onlyOnPress:
    'Wordreach lee una página solo cuando usted pulsa su botón, y solo esa página. Nada sale de su equipo: no hay servidor, ni cuenta, ni recuento de uso.',
  keptHere:
    'Los grupos, las secuencias, los pasajes, las lecciones y la estantería se guardan en este navegador. Puede guardarlo todo en un archivo, y desaparece si quita la extensión.',
  copies:
    'Si marca la copia a sus otros navegadores, los grupos y las secuencias se copian con la cuenta de su navegador, nunca con nombres de alumnos ni lugares. Está desactivada hasta que la marque.',
  files:
    'Los archivos para compartir omiten los nombres salvo que los marque. El archivo que lo guarda todo sí los tiene: consérvelo usted.',
  whatPagesSee:
    'Un programa de la página que revisa podría ver qué palabras están marcadas, en cuatro clases, y nada más: ni su grupo, ni lo enseñado, ni el panel.',
  licences: 'De quién es el trabajo que contiene Wordreach, y con qué licencias (en inglés)',
};
