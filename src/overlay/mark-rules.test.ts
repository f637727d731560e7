import { describe, expect, test } from 'vitest';
import { type Ink, inheritsMarks, LINES, MARKS, type Mark, markRules, WASHES } from './mark-rules.ts';

/** Returns the rule of one highlight. */
function ruleOf(name: string, css: string): string {
  return new RegExp(`::highlight\\(${name}\\) \\{([^}]*)\\}`).exec(css)?.[1] ?? '';
}

const ink = (given: Partial<Ink>): Ink => ({ color: 'rgb(1 2 3)', ...given });
const inked = (look: 'wash' | 'underline', mark: Mark, given: Partial<Ink>): string =>
  ruleOf('wr-9', markRules(look, [{ name: 'wr-9', mark, ink: ink(given) }]));

describe('a mark', () => {
  test.each(Object.entries(MARKS))('of kind %s has its own line under the text', (mark, name) => {
    for (const look of ['wash', 'underline'] as const)
      expect(ruleOf(name, markRules(look))).toContain(`underline ${LINES[mark as Mark]} currentColor`);
  });

  test('has a line style that no other kind has', () => {
    expect(new Set(Object.values(LINES)).size).toBe(Object.keys(LINES).length);
  });

  test.each<[string, string, string | undefined]>([
    ['beyond, with the wash', ruleOf(MARKS.beyond, markRules('wash')), WASHES.beyond![0]],
    ['beyond, with lines alone', ruleOf(MARKS.beyond, markRules('underline')), undefined],
    ['fresh, with the wash', ruleOf(MARKS.fresh, markRules('wash')), undefined],
    ['where the reader is, with lines alone', ruleOf(MARKS.here, markRules('underline')), WASHES.here![0]],
    ['beyond, in letters of another colour', inked('wash', 'beyond', {}), WASHES.beyond![0]],
    ['the same, with lines alone', inked('underline', 'beyond', {}), undefined],
    [
      'beyond, over a picture of letters',
      inked('wash', 'beyond', { color: 'transparent' }),
      WASHES.beyond![1],
    ],
    ['beyond, in a drawing', inked('wash', 'beyond', { isDrawing: true }), WASHES.beyond![2]],
    [
      'beyond, in a drawing, with lines alone',
      inked('underline', 'beyond', { isDrawing: true }),
      WASHES.beyond![2],
    ],
    ['beyond, in faint letters', inked('wash', 'beyond', { isFaint: true }), undefined],
    ['where the reader is, in faint letters', inked('wash', 'here', { isFaint: true }), undefined],
  ])('(%s) has a wash only where the wash is visible and the text stays legible', (_what, rule, wash) => {
    expect(/background-color: ([^;]*);/.exec(rule)?.[1]).toBe(wash);
  });

  test('keeps the colour of the letters, and has a line colour of its own over a picture of letters', () => {
    expect(inked('wash', 'fresh', {})).toMatch(/[^-]color: rgb\(1 2 3\);.*currentColor/);
    expect(inked('wash', 'fresh', { color: 'transparent' })).toMatch(
      /[^-]color: transparent;.*rgb\(20 132 116\)/,
    );
    expect(ruleOf(MARKS.fresh, markRules('wash'))).not.toMatch(/[^-]color:/);
  });

  test('has its line inside the painted box when colours are forced', () => {
    const css = markRules('underline', [{ name: 'wr-9', mark: 'fresh', ink: ink({}) }]);
    const forced = css.slice(css.indexOf('@media'));
    for (const name of [...Object.values(MARKS), 'wr-9']) expect(forced).toContain(`::highlight(${name})`);
    expect(forced).toContain('text-underline-offset: auto');
  });

  test('is inherited from the root with a line of the size of the text, and has a line of its own in headings', () => {
    const css = markRules('wash', [{ name: 'wr-9', mark: 'fresh', ink: ink({}) }], 20);
    expect(css).toContain(':root::highlight(wr-1) {');
    expect(ruleOf(MARKS.beyond, css)).toMatch(/dotted 2\.8[\d]*px currentColor; text-underline-offset: 4px/);
    for (const name of [...Object.values(MARKS), 'wr-9'])
      expect(css).toContain(`:is(h1, h2, h3, h4)::highlight(${name}) { text-decoration-thickness: 0.`);
    expect(css.replaceAll(/(?::root|:is\([^)]*\))::highlight/g, '')).not.toContain('::highlight');
  });
});

test('marks are inherited in Chromium from version 134 on, and in no other browser', () => {
  const chromium = (version: number): string =>
    `Mozilla/5.0 (X11; CrOS x86_64 14541.0.0) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/${version}.0.0.0 Safari/537.36`;
  expect([133, 134, 156].map((version) => inheritsMarks(chromium(version)))).toEqual([false, true, true]);
  expect(inheritsMarks('Mozilla/5.0 (X11; Linux x86_64; rv:153.0) Gecko/20100101 Firefox/153.0')).toBe(false);
});
