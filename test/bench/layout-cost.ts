import { check, layouts } from '../../calc/index.ts';
import { checkBracketShelf } from '../../calc/elements/bracket-shelf/index.ts';
import { readDocument, type BracketShelfInput } from '../../shared/check-document/index.ts';
import { studShelf } from '../calc/layout/documents.ts';
import { figures, type Row } from './report.ts';
import { inTurns, median, medianRatio } from './timing.ts';

const leastSpared = 5;
const mostRemedies_ms = 100;

/** Inner studs of the shelf, in: every choice of two to six of them whose ends stand out by no more than half a bay. */
const studs = [5, 21, 37, 53, 69, 85].map((at) => at + 3);
const length = 96;

/** The search for the best layouts of a board 8 ft long on studs 16 in apart, against a check made anew for every one. */
export function layoutCost(rounds: number): Row {
  const first = `${studs[0] ?? 0} in`;
  const document = studShelf({
    wall: { studs: { first, spacing: '16 in' } },
    brackets: { positions: [first, '56 in', '88 in'] },
  });
  const candidates = choices().map((places): BracketShelfInput => {
    const positions = places.map((at) => `${at} in`);
    return { ...document, brackets: { ...document.brackets, positions } };
  });
  const [searches = [], checks = []] = inTurns(
    [
      { run: () => void layouts(document), times: 1 },
      { run: () => candidates.forEach(checkAlone), times: 1 },
    ],
    rounds,
    rounds,
  );
  const ratio = medianRatio(checks, searches);
  return {
    what: 'Search for brackets on the studs of an 8 ft board, a check anew for every layout over the search',
    measured: figures(ratio),
    target: `at least ${leastSpared}`,
    met: ratio >= leastSpared,
    information: `a search ${figures(median(searches))} ms (wanted: under 50), ${candidates.length} checks ${figures(median(checks))} ms`,
  };
}

/** A whole check without the ways out, which nobody asks for here and which would flatter the search. */
function checkAlone(candidate: BracketShelfInput): void {
  const reading = readDocument(candidate);
  if (!reading.ok) throw new Error('a layout of the bench can be read');
  checkBracketShelf(reading.document);
}

function choices(): number[][] {
  return Array.from({ length: 2 ** studs.length }, (_, mask) =>
    studs.filter((__, i) => (mask >> i) % 2 === 1),
  ).filter(
    (places) => places.length >= 2 && isShort(places) && isShort(places.map((at) => length - at).reverse()),
  );
}

function isShort([first = 0, second = 0]: readonly number[]): boolean {
  return first <= 8 || first <= (second - first) / 2;
}

/** What ways out add to the check of a shelf that does not hold. */
export function remedyCost(rounds: number): Row {
  const sagging = studShelf({ board: { thickness: '1 in' } });
  const calm = studShelf({ board: { thickness: '1-1/2 in' } });
  const [failing = [], holding = []] = inTurns(
    [
      { run: () => void check(sagging), times: 1 },
      { run: () => void check(calm), times: 1 },
    ],
    rounds,
    rounds,
  );
  const added = median(failing) - median(holding);
  return {
    what: 'Ways out of a shelf that sags, time they add to its check, ms',
    measured: figures(added),
    target: `under ${mostRemedies_ms}`,
    met: added < mostRemedies_ms,
    information: `a check with ways out ${figures(median(failing))} ms, of a shelf that holds ${figures(median(holding))} ms`,
  };
}
