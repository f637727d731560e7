import type { privacy as english } from '../en/privacy.ts';
import type { Translated } from '../translation.ts';

/** The statement on privacy: where the teacher's texts and groups are kept and who can see them. */
export const privacy: Translated<typeof english> = {
  title: 'Privacidad',
  inShort: 'En pocas palabras',
  onlyOnPress:
    'Wordreach lee una página solo cuando usted pulsa su botón, y solo esa página. No envía nada a ninguna parte: no hay servidor, ni cuenta, ni estadísticas de uso.',
  names:
    'Los nombres de alumnos y lugares se quedan en este navegador. Solo salen de él en un archivo que usted guarde con nombres.',
  read: 'Archivos PDF, imágenes, reescrituras',
  pdf: 'Cuando pulsa el botón en un PDF, se vuelve a descargar el mismo archivo del mismo sitio, como hizo antes el navegador. No se pide nada más, y el archivo no sale de su equipo.',
  kept: 'Guardado en este navegador',
  keptHere:
    'Los grupos, las secuencias, los pasajes, las lecciones, las palabras de las hojas que imprimió o guardó y la estantería se guardan en este navegador. Puede guardarlo todo en un archivo. Si quita la extensión, se borra todo lo que hay en el navegador.',
  copies:
    'Puede copiar grupos y secuencias a sus otros navegadores con su propia cuenta del navegador. Los nombres de alumnos y lugares no se copian nunca. Está desactivado hasta que usted lo active.',
  files:
    'Los archivos para compartir no llevan nombres, salvo que usted los incluya. El archivo de «Guardarlo todo» lleva todos los nombres, así que no lo comparta.',
  forExperts: 'Para el personal técnico: qué podría averiguar una página web',
  whatPagesSee:
    'El código de la página que usted revisa podría ver cuáles de sus palabras están marcadas, de cinco tipos, y que hay una tarjeta abierta, dónde y de qué tamaño. Si muestra palabras propias, podría averiguar qué patrones se marcan como faltantes y cuáles vienen en los próximos pasos. No puede ver el texto de la tarjeta, ni sus grupos, ni el panel. Los nombres, las palabras de reconocimiento visual, las omitidas y las legibles tienen el mismo aspecto: sin marca.',
  privateMarks:
    'Las marcas privadas (un ajuste del panel) ocultan también las marcas. Se dibujan en una capa sobre la página: un programa podría ver que la capa está ahí, pero no lo que hay en ella. Algunas marcas se ven más sencillas, y no se imprimen. Wordreach las activa por sí mismo en marcos de otros sitios y donde una página quita las marcas o reescribe su texto sin parar.',
  whatCardsDo:
    'Una tarjeta no cambia nada mientras algo de la página está encima de ella, ni en su primer medio segundo en un lugar. En un marco de otro sitio (en Firefox: en cualquier marco), o en una página que no admite tarjetas, use el panel. En Firefox, una página hecha para ello podría esconder una tarjeta en momentos que Wordreach no ve; en una página de la que desconfíe, use el panel.',
  model:
    'Si su navegador tiene un modelo de lenguaje propio y usted pide reescrituras de un pasaje, sus oraciones van a ese modelo en este equipo y a ningún otro sitio. Si le pide un borrador, van allí las palabras que el grupo puede leer y dos nombres. Puede que el navegador descargue antes el modelo; su texto no forma parte de eso.',
  pictures:
    'Wordreach lee una imagen de texto, o una pantalla, solo cuando usted lo pide, y solo en este equipo. El lector viene incluido en la extensión. La imagen está en la memoria hasta que usted cierra su página, y no se guarda. Su texto se guarda solo si hace con él un pasaje o una lección, o si lo guarda en la estantería.',
  licences: 'Créditos y licencias (en inglés)',
};
