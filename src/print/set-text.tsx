import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { countByLine, cutLines } from './cut-lines.ts';
import { findLineStarts } from './find-line-starts.ts';
import { groupItems } from './group-items.ts';
import { type SheetLine, type SheetRun, textOf } from './make-sheet.ts';
import type { SheetChoices } from './sheet-choices.ts';

interface SetTextProps {
  readonly lines: readonly SheetLine[];
  readonly margin: SheetChoices['margin'];
}

/**
 * The text of a sheet. For a number beside each line it is set twice: freely, to see where the browser breaks it, then
 * in those lines, so that paper cannot break it elsewhere and each number is that of its line. It measures once; give it
 * another `key` when its width or its letters change.
 */
export function SetText({ lines, margin }: SetTextProps) {
  const body = useRef<HTMLDivElement>(null);
  const [starts, setStarts] = useState<ReadonlyMap<SheetLine, readonly number[]> | null>(null);
  useLayoutEffect(() => {
    if (margin === 'none') return;
    const blocks = [...body.current!.querySelectorAll('[data-text]')];
    const counted = lines.filter(({ kind }) => kind !== 'heading');
    setStarts(new Map(counted.map((line, i) => [line, findLineStarts(blocks[i]!)])));
  }, []);
  const numbers = starts && numberLines(starts, margin);
  const show = (line: SheetLine) => {
    const broken = starts?.get(line);
    if (!broken) return <Runs runs={line.runs} />;
    return cutLines(line.runs, broken).map((runs, i) => (
      <span class="set-line" key={i}>
        <Runs runs={runs} />
        <span class="set-number" aria-hidden="true">
          <small>{numbers!.get(line)![i]}</small>
        </span>{' '}
      </span>
    ));
  };
  return (
    <div class={`set-text set-${margin}`} ref={body}>
      {groupItems(lines).map((line, i) => {
        if (Array.isArray(line)) {
          return (
            <ul key={i}>
              {line.map((item, j) => (
                <li key={j} data-text>
                  {show(item)}
                </li>
              ))}
            </ul>
          );
        }
        if (line.kind === 'heading') {
          const Heading = `h${line.level + 1}` as 'h2';
          return (
            <Heading key={i}>
              <Runs runs={line.runs} />
            </Heading>
          );
        }
        return (
          <p key={i} data-text>
            {show(line)}
          </p>
        );
      })}
    </div>
  );
}

function Runs({ runs }: { runs: readonly SheetRun[] }) {
  return <>{runs.map(({ text, fresh }, i) => (fresh ? <u key={i}>{text}</u> : text))}</>;
}

/** The number beside each line of each block. */
function numberLines(
  starts: ReadonlyMap<SheetLine, readonly number[]>,
  margin: SheetChoices['margin'],
): Map<SheetLine, number[]> {
  let before = 0;
  return new Map(
    [...starts].map(([line, broken]) => {
      const own = margin === 'counts' ? countByLine(textOf(line.runs), broken) : broken.map((_, i) => i + 1);
      const numbers = own.map((number) => before + number);
      before = numbers.at(-1)!;
      return [line, numbers];
    }),
  );
}
