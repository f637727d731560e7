import fc from 'fast-check';

/**
 * Makes a line of text that causes errors where code does not handle markup, XML, bidi characters or broken characters.
 * The line never starts a list or a heading.
 */
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
