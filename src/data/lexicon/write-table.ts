import {
  AFFIXED,
  BLOCK,
  COMPOUND,
  DERIVED,
  HOMOGRAPH,
  LONG,
  NAME,
  RARE_UNITS,
  type TableHeader,
  WHOLE,
} from '../../analyze/lexicon/table-format.ts';
import type {
  AffixForm,
  Correspondence,
  MadeBy,
  ReadingRecord,
  WordRecord,
} from '../../analyze/lexicon/word-record.ts';
import type { Usage } from '../../analyze/types.ts';

/** Returns the file of all words in the format of analyze/lexicon/table-format.ts. The same records give the same bytes. */
export function writeTable(
  records: ReadonlyMap<string, WordRecord>,
  usageOf: (word: string) => Usage,
  british: ReadonlyMap<string, string> = new Map(),
): Uint8Array {
  const units = rankByUse(unitsIn(records), keyOfUnit);
  const affixes = rankByUse(affixesIn(records), keyOfAffix);
  const codes = chooseCodes(records, units.place, units.list.length);
  const lines = [...british.keys()]
    .sort((a, b) => (a < b ? -1 : 1))
    .map((word) => `${word}\t${british.get(word)}\n`)
    .join('');
  const header: TableHeader = {
    units: units.list.map(({ letters, sound }) => [letters, sound]),
    codes: codes.list,
    british: lines.length,
    affixes: affixes.list.map(({ letters, sound, kind }) => [letters, sound, kind]),
  };
  if (affixes.list.length > 256)
    throw new Error(`${affixes.list.length} affix forms do not fit into one byte.`);
  const words = [...records.keys()].sort((a, b) => (a < b ? -1 : 1));
  const bytes: number[] = [];
  const offsets: number[] = [];
  let previous = '';
  for (const [i, word] of words.entries()) {
    if (i % BLOCK === 0) {
      offsets.push(bytes.length);
      previous = '';
    }
    const shared = Math.min(LONG, sharedLength(previous, word));
    const rest = word.length - shared;
    const body = encode(
      records.get(word)!,
      (some) => codes.encode(some.map(units.place)),
      affixes.place,
      usageOf(word) === 'name',
    );
    if (body.length > 255) throw new Error(`The record of ${word} is too long.`);
    bytes.push((shared << 4) | Math.min(rest, LONG), ...(rest >= LONG ? [rest] : []));
    bytes.push(...lettersOf(word.slice(shared)), body.length, ...body);
    previous = word;
  }
  const common = new Uint8Array(Math.ceil(words.length / 8));
  for (const [i, word] of words.entries()) if (usageOf(word) === 'common') common[i >> 3]! |= 1 << (i & 7);
  bytes.push(...common);
  for (let i = 0; i < lines.length; i++) bytes.push(lines.charCodeAt(i));
  return assemble(header, words.length, offsets, bytes);
}

function assemble(
  header: TableHeader,
  size: number,
  offsets: readonly number[],
  bytes: readonly number[],
): Uint8Array {
  const head = new TextEncoder().encode(JSON.stringify(header));
  const out = new Uint8Array(8 + head.length + 4 * offsets.length + bytes.length);
  const view = new DataView(out.buffer);
  view.setUint32(0, head.length, true);
  view.setUint32(4, size, true);
  out.set(head, 8);
  for (const [i, offset] of offsets.entries()) view.setUint32(8 + head.length + 4 * i, offset, true);
  out.set(bytes, 8 + head.length + 4 * offsets.length);
  return out;
}

function encode(
  record: WordRecord,
  encodeUnits: (units: readonly Correspondence[]) => number[],
  affixPlace: (affix: AffixForm) => number,
  isName: boolean,
): number[] {
  const flag = (record.homograph ? HOMOGRAPH : 0) | (isName ? NAME : 0);
  return record.readings.flatMap((reading) => encodeReading(reading, flag, encodeUnits, affixPlace));
}

function encodeReading(
  reading: ReadingRecord,
  flag: number,
  encodeUnits: (units: readonly Correspondence[]) => number[],
  affixPlace: (affix: AffixForm) => number,
): number[] {
  const tag = (kind: number, number: number): number => {
    return kind | flag | (Math.min(number, LONG) << 4);
  };
  switch (reading.kind) {
    case 'affixed':
      return [tag(AFFIXED, baseOf(reading.madeBy)), affixPlace(reading.madeBy.affix)];
    case 'compound':
      return [tag(COMPOUND, (reading.left << 2) | reading.right), reading.cut];
    case 'whole': {
      const { length } = reading.units;
      const units = [...(length >= LONG ? [length] : []), ...encodeUnits(reading.units)];
      const { madeBy } = reading;
      if (!madeBy) return [tag(WHOLE, length), ...units];
      return [tag(DERIVED, length), affixPlace(madeBy.affix), baseOf(madeBy), ...units];
    }
  }
}

function baseOf({ stem, reading, lessened }: MadeBy): number {
  if (stem > 3 || reading > 1) throw new Error('A base does not fit into four bits.');
  return (lessened ? 8 : 0) | (stem << 1) | reading;
}

interface Codes {
  readonly list: readonly (readonly number[])[];
  encode(places: readonly number[]): number[];
}

/** How many pairs of units get their own code. More pairs would leave no one-byte codes for common units. */
const PAIRS = 120;

/** Chooses a code for each unit and for the commonest pairs, ranked by use. */
function chooseCodes(
  records: ReadonlyMap<string, WordRecord>,
  placeOf: (unit: Correspondence) => number,
  units: number,
): Codes {
  const single = new Array<number>(units).fill(0);
  const pairs = new Map<string, number>();
  for (const { readings } of records.values()) {
    for (const reading of readings) {
      if (reading.kind !== 'whole') continue;
      const places = reading.units.map(placeOf);
      for (const [i, place] of places.entries()) {
        single[place]!++;
        if (i > 0) {
          const pair = `${places[i - 1]} ${place}`;
          pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
        }
      }
    }
  }
  const common = [...pairs].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1)).slice(0, PAIRS);
  const ranked = [
    ...single.map((count, place) => ({ places: [place], count })),
    ...common.map(([pair, count]) => ({ places: pair.split(' ').map(Number), count })),
  ].sort((a, b) => b.count - a.count);
  const list = ranked.map(({ places }) => places);
  const code = new Map(list.map((places, i) => [places.join(' '), i]));
  return {
    list,
    encode(places) {
      const bytes: number[] = [];
      for (let i = 0; i < places.length; i++) {
        const pair = code.get(`${places[i]} ${places[i + 1]}`);
        bytes.push(...codeBytes(pair ?? code.get(`${places[i]}`)!));
        if (pair !== undefined) i++;
      }
      return bytes;
    },
  };
}

function codeBytes(code: number): number[] {
  if (code < RARE_UNITS) return [code];
  const rest = code - RARE_UNITS;
  return [RARE_UNITS + (rest >> 8), rest & 255];
}

function* unitsIn(records: ReadonlyMap<string, WordRecord>): Generator<Correspondence> {
  for (const { readings } of records.values())
    for (const one of readings) if (one.kind === 'whole') yield* one.units;
}

function* affixesIn(records: ReadonlyMap<string, WordRecord>): Generator<AffixForm> {
  for (const { readings } of records.values()) {
    for (const one of readings) if (one.kind !== 'compound' && one.madeBy) yield one.madeBy.affix;
  }
}

const keyOfUnit = ({ letters, sound }: Correspondence): string => `${letters}:${sound}`;
const keyOfAffix = (affix: AffixForm): string => `${keyOfUnit(affix)}:${affix.kind}`;

function rankByUse<T>(uses: Iterable<T>, key: (one: T) => string): { list: T[]; place: (one: T) => number } {
  const counts = new Map<string, { one: T; count: number }>();
  for (const one of uses) {
    const known = counts.get(key(one));
    if (known) known.count++;
    else counts.set(key(one), { one, count: 1 });
  }
  const sorted = [...counts].sort(([a, x], [b, y]) => y.count - x.count || (a < b ? -1 : 1));
  const places = new Map(sorted.map(([name], i) => [name, i]));
  return { list: sorted.map(([, { one }]) => one), place: (one) => places.get(key(one))! };
}

function sharedLength(one: string, other: string): number {
  let length = 0;
  while (length < one.length && length < other.length && one[length] === other[length]) length++;
  return length;
}

function lettersOf(text: string): number[] {
  return [...text].map((letter) => letter.charCodeAt(0));
}
