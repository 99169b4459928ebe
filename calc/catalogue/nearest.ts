/** Letters, digits and `/` only, in lower case: how names are compared. */
export function words(name: string): string[] {
  return (
    name
      .toLowerCase()
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .match(/[a-z0-9]+(?:\/[a-z0-9]+)*/g) ?? []
  );
}

const longest = 80;

/**
 * The names most like one that is not known. Word order, case, hyphens and a slip of the pen or two do not matter.
 *
 * @param name what was written; only its first 80 characters count
 * @param names what there is
 * @param count how many to give at most
 * @returns the nearest names, best first
 */
export function nearest(name: string, names: readonly string[], count: number): string[] {
  const wanted = words(name.slice(0, longest));
  return names
    .map((candidate, order) => ({ candidate, order, distance: distance(wanted, words(candidate)) }))
    .sort((a, b) => a.distance - b.distance || a.order - b.order)
    .slice(0, count)
    .map(({ candidate }) => candidate);
}

/**
 * How far two names are apart: 0 the same words, about 1 nothing in common. The better of two readings: word by word in any
 * order, and run together (`red cedar`, `redcedar`), where a part of the other name counts as near.
 */
export function distance(wanted: readonly string[], candidate: readonly string[]): number {
  if (wanted.length === 0 || candidate.length === 0) return 1;
  return Math.min(wordByWord(wanted, candidate), runTogether(wanted.join(''), candidate.join('')));
}

const shortestPart = 3;
const partOnly = 0.1;

function runTogether(wanted: string, candidate: string): number {
  const part = wanted.length >= shortestPart && candidate.includes(wanted);
  return Math.min(relative(wanted, candidate), part ? partOnly : 1);
}

const eachWordNotWanted = 0.05;

function wordByWord(wanted: readonly string[], candidate: readonly string[]): number {
  const apart = wanted.map((word) => Math.min(...candidate.map((other) => relative(word, other))));
  const extra = Math.max(0, candidate.length - wanted.length) * eachWordNotWanted;
  return apart.reduce((sum, each) => sum + each, 0) / wanted.length + extra;
}

function relative(a: string, b: string): number {
  return edits(a, b) / Math.max(a.length, b.length);
}

/** Letters to add, drop, change or swap with a neighbour to turn one word into the other. */
function edits(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const now = [row];
    for (let column = 1; column <= b.length; column++) {
      const change = a[row - 1] === b[column - 1] ? 0 : 1;
      let best = Math.min(
        (last[column] ?? 0) + 1,
        (now[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + change,
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        best = Math.min(best, (beforeLast[column - 2] ?? 0) + 1);
      }
      now.push(best);
    }
    beforeLast = last;
    last = now;
  }
  return last[b.length] ?? 0;
}
