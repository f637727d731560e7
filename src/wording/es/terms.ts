import type { terms as english } from '../en/terms.ts';
import type { Translated } from '../translation.ts';

/** Terms of the trade, each with what it means. */
export const terms: Translated<typeof english> = {
  closed: 'sílaba cerrada',
  closedMeans: 'Una sílaba cerrada termina en consonante. Su vocal es corta, como en nap·kin.',
  open: 'sílaba abierta',
  openMeans: 'Una sílaba abierta termina en vocal. La vocal es larga, como en ro·bot.',
  vce: 'vocal-consonante-e',
  vceMeans: 'Una vocal, una consonante y una e muda. La vocal es larga, como en lake.',
  team: 'grupo vocálico',
  teamMeans: 'Letras que juntas representan una sola vocal, como en rain.',
  rControlled: 'vocal con r',
  rControlledMeans: 'Una r cambia el sonido de la vocal que la precede, como en star.',
  consonantLe: 'consonante-le',
  consonantLeMeans: 'Una consonante y le al final de una palabra, como en ta·ble.',
  schwa: 'schwa',
  schwaMeans: 'El sonido vocálico de una sílaba átona, como la a de about.',
  decodable: 'decodificable',
  decodableMeans: 'Al grupo se le enseñaron todos los patrones de la palabra, así que puede decodificarla.',
  bySight: 'palabra de reconocimiento visual',
  bySightMeans: 'Una palabra con letras irregulares, o que se enseña antes que sus patrones.',
  unsure: 'dudosa',
  unsureMeans: 'Wordreach tuvo que suponer, o decide la oración. Revise usted la palabra.',
  notYet: 'aún no decodificable',
  notYetMeans: 'Al grupo le falta un patrón de la palabra.',
  pattern: 'patrón',
  patternMeans:
    'Algo que se enseña: una grafía con su sonido, una terminación, un cambio ortográfico, un tipo de sílaba.',
};
