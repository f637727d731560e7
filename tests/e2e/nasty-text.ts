import fc from 'fast-check';

/** One line of text that stumbles where markup, XML, bidi or broken characters are not minded; never starts a list or heading. */
export const nastyText = fc
  .array(
    fc.oneof(
      fc.constantFrom('<b>', '</p>', '&amp;', '&', '"', "'", ']]>', '<!--', '<script>', '{{x}}', '$&', '\\'),
      fc.constantFrom(
        '\u202E',
        '\u2066',
        '\u200F',
        '\0',
        '\x1B',
        '\uD800',
        '\uDC00',
        '\uFFFE',
        '\u2028',
        '\t',
      ),
      fc.constantFrom('net', ' ', 'é', '😀', 'ا'),
      fc.string({ unit: 'binary', maxLength: 5 }),
    ),
    { minLength: 1, maxLength: 12 },
  )
  .map((parts) => `a${parts.join('').replaceAll('\n', ' ')}z`);
