import { readdirSync, readFileSync } from 'node:fs';
import fc, { type Arbitrary } from 'fast-check';

const pieces = [
  ...[
    'the',
    'ferry',
    'reading',
    'read',
    'Mr.',
    'O’Brien',
    "don't",
    'well-known',
    'lead',
    'wind',
    'Tarn Quay',
    'I',
    'A',
  ],
  ...[
    ' ',
    '\n',
    '\n\n',
    '\r',
    '\t',
    '\u00a0',
    '\u2028',
    '. ',
    ', ',
    '! ',
    '? “',
    '” ',
    '…',
    '—',
    '-',
    "'",
    '’',
    '/',
    '@',
    '#',
  ],
  ...[
    '<b>',
    '</b>',
    '<script>',
    '&amp;',
    '&#0;',
    ']]>',
    '<!--',
    '{',
    '}',
    '[',
    ']',
    '"',
    '\\',
    '$&',
    '%',
    '|',
    ';',
    ':',
  ],
  ...[
    '\u00ad',
    '\u200b',
    '\u200d',
    '\u2060',
    '\ufeff',
    '\u202e',
    '\u2066',
    '\u0301',
    '\u0345',
    '\ufb01',
    '\uff21',
    'ı',
    'İ',
    'ß',
    'ſ',
  ],
  ...[
    '\0',
    '\x1b',
    '\ud800',
    '\udc00',
    '\ufffe',
    '😀',
    '👩‍👩‍👧',
    '漢字',
    'שלום',
    'ا',
    '①',
    '½',
    '12',
    '3rd',
    '9:15',
    'a.b@c.example',
    'https://a.example/b',
  ],
];

/** Makes any text, and texts built from pieces that may confuse a tokeniser or parser. */
export const nastyText: Arbitrary<string> = fc.oneof(
  { weight: 20, arbitrary: fc.string({ unit: 'binary', maxLength: 80, size: 'max' }) },
  {
    weight: 60,
    arbitrary: fc
      .array(fc.constantFrom(...pieces), { maxLength: 40, size: 'max' })
      .map((some) => some.join('')),
  },
  { weight: 5, arbitrary: repeated(60) },
  // These texts are long enough to reveal code that takes too much time.
  { weight: 1, arbitrary: repeated(1000) },
);

function repeated(most: number): Arbitrary<string> {
  return fc
    .tuple(fc.constantFrom(...pieces), fc.integer({ min: 1, max: most }))
    .map(([piece, times]) => piece.repeat(times));
}

/** Makes texts with some parts changed: removed, doubled, moved, or replaced by nasty text. */
export function mutateText(text: Arbitrary<string>): Arbitrary<string> {
  const change = fc.tuple(fc.nat(3), fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(30), nastyText);
  return fc.tuple(text, fc.array(change, { maxLength: 6 })).map(([start, changes]) =>
    changes.reduce((now, [kind, place, length, put]) => {
      const at = Math.floor(place * now.length);
      const part = now.slice(at, at + length);
      if (kind === 0) return now.slice(0, at) + now.slice(at + length);
      if (kind === 1) return now.slice(0, at) + part + now.slice(at);
      if (kind === 2) return now.slice(0, at) + now.slice(at + length) + part;
      return now.slice(0, at) + put + now.slice(at);
    }, start),
  );
}

/** Makes copies of a file's bytes with some bytes changed, removed or doubled. */
export function mutateBytes(bytes: Uint8Array): Arbitrary<Uint8Array> {
  const change = fc.tuple(fc.nat(3), fc.nat(Math.max(0, bytes.length - 1)), fc.nat(64), fc.nat(255));
  return fc.array(change, { minLength: 1, maxLength: 8 }).map((changes) => {
    let now = bytes;
    for (const [kind, at, length, byte] of changes) {
      if (kind <= 1) {
        now = Uint8Array.from(now);
        if (at < now.length) now[at] = byte;
      } else {
        const from = kind === 2 ? at + length : Math.max(0, at - length);
        now = Uint8Array.from([...now.subarray(0, at), ...now.subarray(from)]);
      }
    }
    return now;
  });
}

/** Makes any JSON value, including keys that confuse careless code. */
const nastyJson: Arbitrary<unknown> = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 2 },
    fc.oneof(
      nastyText,
      fc.integer(),
      fc.constantFrom(null, true, false, -1, 1.5, 2 ** 53, '', '__proto__', -0),
    ),
    fc.array(tie('value'), { maxLength: 3 }),
    fc
      .array(
        fc.tuple(
          fc.constantFrom('__proto__', 'constructor', 'toString', 'name', 'id', 'length'),
          tie('value'),
        ),
        {
          maxLength: 3,
        },
      )
      .map((entries) => Object.fromEntries(entries)),
  ),
})).value;

/** Makes copies of a JSON value in which the values at some random paths are replaced, removed or added. */
export function mutateJson(value: unknown): Arbitrary<unknown> {
  const change = fc.tuple(
    fc.array(fc.nat(30), { minLength: 1, maxLength: 6 }),
    fc.nat(3),
    nastyJson,
    nastyText,
  );
  return fc.array(change, { maxLength: 4 }).map((changes) => {
    const whole = { value: structuredClone(value) };
    for (const [path, kind, put, key] of changes) changeAt(whole, path, kind, put, key);
    return whole.value;
  });
}

function changeAt(parent: object, [first, ...path]: number[], kind: number, put: unknown, key: string): void {
  const keys = Object.keys(parent);
  const chosen = keys[first! % Math.max(1, keys.length)];
  const child = chosen === undefined ? undefined : (parent as Record<string, unknown>)[chosen];
  if (path.length > 0 && typeof child === 'object' && child !== null) changeAt(child, path, kind, put, key);
  else if (kind === 3 || chosen === undefined)
    define(parent, Array.isArray(parent) ? `${keys.length}` : key, put);
  else if (kind === 2 && Array.isArray(parent)) parent.splice(Number(chosen), 1);
  else if (kind === 2) delete (parent as Record<string, unknown>)[chosen];
  else define(parent, chosen, kind === 1 ? structuredClone(child) : put);
}

/** Sets any key, even `__proto__`, as an ordinary property, as JSON.parse does. */
function define(parent: object, key: string, value: unknown): void {
  Object.defineProperty(parent, key, { value, enumerable: true, writable: true, configurable: true });
}

/** Reads the texts of all files with an ending in a folder of the tests. */
export function readTexts(folder: string, ending: string): readonly string[] {
  const place = new URL(`../${folder}/`, import.meta.url);
  return readdirSync(place)
    .filter((name) => name.endsWith(ending))
    .map((name) => readFileSync(new URL(name, place), 'utf8'));
}
