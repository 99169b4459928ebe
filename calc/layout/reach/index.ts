import type { Reach } from '../../../shared/check-result.ts';
import { readSubject } from '../subject.ts';
import { heaviestLine, heaviestPoint } from './heaviest.ts';
import { longestBay } from './longest-bay.ts';

/**
 * How far a shelf could go: its longest bay, its heaviest line load and its heaviest point load at which every check still
 * holds. Each is found by trying amounts on the true checks and closing in on the place where one of them ends to hold;
 * each comes with a whole check at that amount.
 *
 * @param document an untrusted check document, as parsed from JSON
 * @throws DocumentError with every error of the document, as `check` does
 */
export function reach(document: unknown): Reach {
  const subject = readSubject(document);
  return {
    longestBay: longestBay(subject),
    heaviestLine: heaviestLine(subject),
    heaviestPoint: heaviestPoint(subject),
  };
}
