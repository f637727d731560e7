/**
 * The attempts of an attacker, a crash or a damaged file, and the test files that try each attempt. A new attack gets a
 * line in this list.
 */
export const attacks: readonly { readonly what: string; readonly tries: readonly string[] }[] = [
  {
    what: 'a browser killed while somebody types',
    tries: ['tests/attack/kill-while-typing.spec.ts', 'tests/views/typed.test.ts'],
  },
  { what: 'pages made to lead the shading astray', tries: ['tests/e2e/hostile-pages.spec.ts'] },
  {
    what: 'pages that lie over the card, or read it',
    tries: ['tests/e2e/card-covers.spec.ts', 'tests/e2e/card-frame.spec.ts', 'tests/e2e/card.spec.ts'],
  },
  { what: 'pages that read the marks', tries: ['tests/e2e/private-marks.spec.ts'] },
  {
    what: 'text that would run or load something in a page of the extension',
    tries: ['tests/e2e/injection.spec.ts', 'tests/e2e/leaks.spec.ts'],
  },
  {
    what: 'files made to fill the machine',
    tries: [
      'src/passage/files/file-budgets.test.ts',
      'src/passage/files/file-time.test.ts',
      'tests/e2e/desk-files.spec.ts',
    ],
  },
  {
    what: 'names every object has, and damaged storage',
    tries: ['tests/properties/prototype-names.test.ts', 'tests/properties/garbled-storage.test.ts'],
  },
  { what: 'a storage that cannot be read', tries: ['tests/views/faults.test.ts'] },
  { what: 'a system that refuses a command', tries: ['tests/cli-faults.test.ts'] },
  { what: 'colours of pages that the wash would make illegible', tries: ['tests/e2e/legible.spec.ts'] },
  { what: 'packages nobody looked at', tries: ['tests/notice.test.ts'] },
];
