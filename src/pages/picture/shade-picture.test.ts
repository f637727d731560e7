import { describe, expect, test } from 'vitest';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import { compileGroup, createJudge, parseGroup } from '../../analyze/index.ts';
import { createShader } from '../../passage/shade-line.ts';
import type { ScreenLine } from '../../picture/join-screens.ts';
import { markName, shadePictures } from './shade-picture.ts';

/** A group that knows hardly anything, so that “lighthouse” is beyond the group. */
const judge = createJudge(
  loadAnalyzer(),
  compileGroup(parseGroup({ name: 'Herons', sequence: null, alsoTaught: ['m'] }), null),
);
const shader = createShader(judge);

/** Returns a line of words. A question mark after a word makes its reading unsure. */
function lineOf(text: string): ScreenLine {
  const words = text.split(' ').map((word, n) => ({
    text: word.replace('?', ''),
    box: { left: n * 50, top: 0, right: n * 50 + 40, bottom: 20 },
    sureness: word.endsWith('?') ? 0.3 : 0.95,
    isSure: !word.endsWith('?'),
  }));
  return {
    words,
    box: { left: 0, top: 0, right: 500, bottom: 20 },
    size: 16,
    beginsParagraph: true,
    screen: 0,
  };
}
const shade = (line: string, text = line.replaceAll('?', ''), checked: ReadonlySet<string> = new Set()) =>
  shadePictures([lineOf(line)], text, shader(text), judge, checked);
const shown = (line: string, text?: string, checked?: ReadonlySet<string>) =>
  shade(line, text, checked).marks.map((mark) => `${mark.text}:${mark.standing}${mark.isOpen ? '?' : ''}`);

describe('the words of a picture', () => {
  test('are shaded like the words of a page', () => {
    expect(shown('the lighthouse')[1]).toBe('lighthouse:beyond');
  });

  test('are not beyond the group while their reading is unsure', () => {
    expect(shown('the lighthouse?')[1]).toBe('lighthouse:unsure?');
    const sure = shade('the lighthouse').tally;
    const unsure = shade('the lighthouse?').tally;
    expect([sure.beyond - unsure.beyond, unsure.unsure - sure.unsure]).toEqual([1, 1]);
    expect(unsure.running).toBe(sure.running);
  });

  test('count as sure once the teacher has corrected or confirmed them', () => {
    expect(shown('the 1ighthouse?', 'the lighthouse')[1]).toBe('lighthouse:beyond');
    const checked = new Set([markName({ screen: 0, box: { left: 50, top: 0, right: 90, bottom: 20 } })]);
    expect(shown('the lighthouse?', undefined, checked)[1]).toBe('lighthouse:beyond');
  });

  test('keep their offsets in the text', () => {
    const { marks } = shade('fog at sea', 'Thick fog\nat sea');
    expect(marks.map(({ start, end }) => 'Thick fog\nat sea'.slice(start, end))).toEqual([
      'fog',
      'at',
      'sea',
    ]);
  });

  test('are not marked for checking if they are numbers or signs', () => {
    expect(shade('at 10? —?').marks.filter(({ isOpen }) => isOpen)).toEqual([]);
  });
});
