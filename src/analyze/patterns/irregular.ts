/** Named for a spelling no row of the catalogue has: the o of women. */
export const IRREGULAR = 'irregular';
