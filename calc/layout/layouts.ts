import type { BracketLayout, Layouts, ProposedLayout } from '../../shared/check-result.ts';
import type { BracketShelfInput } from '../../shared/check-document/index.ts';
import { quantity, writeLength } from '../../shared/quantity/index.ts';
import type { Shelf } from '../elements/bracket-shelf/shelf.ts';
import { compare, governingOf, isSymmetric, rank, type Ranked } from './ranking.ts';
import { searchFree } from './search-free.ts';
import { searchStuds, type Found } from './search-studs.ts';
import { overhangRule, standsOf } from './stands.ts';
import { readSubject, type Subject } from './subject.ts';

const mostProposals = 3;
const samePlace_m = 1e-6;

/**
 * Where the brackets of a shelf could go: the best layouts on its wall beside the present one, each judged by every check.
 * Layouts that hold come before others; then fewer brackets, then the stiller shelf, then the more even one.
 *
 * @param document an untrusted check document, as parsed from JSON
 * @throws DocumentError with every error of the document, as `check` does
 */
export function layouts(document: unknown): Layouts {
  const subject = readSubject(document);
  return layoutsOf(subject, rank(subject.shelf));
}

/** The same for a shelf that was read and judged already. */
function layoutsOf({ input, shelf }: Subject, present: Ranked): Layouts {
  const stands = standsOf(shelf);
  const base = { present: layoutOf(present), presentRank: null, proposals: [] };
  if (stands.kind === 'none') {
    const searched = { layouts: 0, judged: 0, isExact: true };
    return { ...base, reason: stands.reason, rules: [], searched };
  }
  const search = stands.kind === 'studs' ? searchStuds : searchFree;
  const { best, ...searched }: Found = search(shelf, stands.places_m, mostProposals + 1);
  const ahead = best.filter((each) => !isSame(each.shelf, shelf));
  const place = best.findIndex((each) => isSame(each.shelf, shelf));
  const proposals = ahead.slice(0, mostProposals).map((each) => proposalOf(input, each));
  return {
    present: base.present,
    presentRank: place < 0 ? null : place + 1,
    proposals,
    reason: proposals.length > 0 ? '' : 'No other layout keeps to these rules.',
    rules: [
      stands.rule,
      overhangRule,
      stands.kind === 'studs'
        ? 'Layouts that hold come first, of them those with the fewest brackets, then the stillest, then the most even.'
        : 'The best layout found of each number of brackets is shown, the fewest that hold first; brackets were moved one by one and in pairs until nothing got better.',
      ...(best.some((each) => compare(each, present) < 0)
        ? []
        : ['No layout found is better than the present one.']),
    ],
    searched,
  };
}

/** A check with its brackets in other places. */
export function withPositions(input: BracketShelfInput, { system, positions_m }: Shelf): BracketShelfInput {
  const positions = positions_m.map((at_m) => writeLength(at_m, system).text);
  return { ...input, brackets: { ...input.brackets, positions } };
}

function proposalOf(input: BracketShelfInput, ranked: Ranked): ProposedLayout {
  return { ...layoutOf(ranked), document: withPositions(input, ranked.shelf) };
}

function layoutOf(ranked: Ranked): BracketLayout {
  const { shelf, judgement, movement } = ranked;
  return {
    positions: shelf.positions_m.map((at_m) => quantity(at_m, 'm', shelf.system)),
    verdict: judgement.verdict,
    governing: governingOf(judgement),
    movement,
    isSymmetric: isSymmetric(ranked),
  };
}

function isSame(a: Shelf, b: Shelf): boolean {
  return (
    a.positions_m.length === b.positions_m.length &&
    a.positions_m.every((at, i) => Math.abs(at - (b.positions_m[i] ?? NaN)) < samePlace_m)
  );
}
