/** The pattern of a spelling that no catalogue row has: the o of women. */
export const IRREGULAR = 'irregular';
