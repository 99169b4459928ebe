import { contentsOf } from '../../calc/elements/bracket-shelf/contents.ts';
import { loadsSchema } from '../../shared/check-document/index.ts';
import { parseQuantity, writeLoadUp, type UnitSystem } from '../../shared/quantity/index.ts';
import { likelyWay } from './alternatives.ts';
import { bareUnits } from './bare-units.ts';
import { readForm } from './read-form.ts';
import { anyWritten, written, type Texts } from './texts.ts';

/** Ways of giving a weight as one number: for each length of a line load, or in all. */
type InOne = 'amount' | 'total';

/**
 * Carries the weight of a load over to another way of giving it, so that what stands there is still as heavy; rounded up in its
 * fourth figure. What the new way says already stays where it comes to the same. Nothing is carried of what can't be read.
 *
 * @param load the name of the group of fields of a load on a shelf
 * @param was how it was given before; empty where nobody says, and then nothing that is written is written over
 * @param by how it is given now
 */
export function carryWeight(texts: Map<string, string>, load: string, was: string, by: string): void {
  if (!isInOne(by) || was === by) return;
  const there = readWeight(texts, load, by);
  if (was === '' && written(texts, `${load}.${by}`) !== '') return;
  const before = was === '' ? likelyWay(load, (name) => anyWritten(texts, name)) : was;
  const given = readWeight(texts, load, before);
  if (given === null) return;
  const isSame = there !== null && isInOne(before) && writtenAs(there, before) === writtenAs(given, before);
  if (!isSame) texts.set(`${load}.${by}`, writtenAs(given, by));
}

function isInOne(way: string): way is InOne {
  return way === 'amount' || way === 'total';
}

interface Weight {
  readonly weight_N: number;
  /** What it is spread over; null for a single thing. */
  readonly length_m: number | null;
  readonly system: UnitSystem;
}

function writtenAs({ weight_N, length_m, system }: Weight, way: InOne): string {
  return way === 'total' || length_m === null
    ? writeLoadUp(weight_N, 'force', system).text
    : writeLoadUp(weight_N / length_m, 'line-load', system).text;
}

type Load = ReturnType<typeof loadsSchema.parse>[number];

/** What a load weighs as it is given in one way; null where that can't be read. */
function readWeight(texts: Texts, load: string, way: string): Weight | null {
  const { document, nameAt, system } = readForm(new Map(texts).set(`${load}.by`, way));
  const [pointer = ''] = [...nameAt].find(([, name]) => name === load) ?? [];
  const place = Number(/^\/loads\/(\d+)$/.exec(pointer)?.[1] ?? NaN);
  const loads: unknown = document['loads'];
  const read = loadsSchema.safeParse(Array.isArray(loads) ? [loads[place]] : []);
  const [given] = read.success ? read.data : [];
  if (given?.kind !== 'line' && given?.kind !== 'point') return null;
  const length_m = given.kind === 'point' ? null : stretchOf(texts, given, system);
  const weight_N = weightOf(given, length_m ?? 1, system);
  return weight_N === null || (length_m !== null && !(length_m > 0)) ? null : { weight_N, length_m, system };
}

/** What a load weighs in all, N; null where that is not given. */
function weightOf(
  given: Extract<Load, { kind: 'line' | 'point' }>,
  length_m: number,
  system: UnitSystem,
): number | null {
  if (given.amount !== undefined) return given.amount * length_m;
  if (given.kind === 'line' && given.total !== undefined) return given.total;
  const { contents, errors } = contentsOf([given], system);
  return errors.length > 0 ? null : (contents[0]?.total_N ?? null);
}

/** How long a line load is, m; NaN where that can't be read. */
function stretchOf(
  texts: Texts,
  { from = 0, to = Infinity }: Extract<Load, { kind: 'line' }>,
  system: UnitSystem,
): number {
  const board = parseQuantity(written(texts, 'board.length'), 'length', bareUnits[system].length);
  return board.ok ? Math.min(to, board.value) - from : NaN;
}
