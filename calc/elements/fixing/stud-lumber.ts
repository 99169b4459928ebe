import { inch } from '../../../shared/quantity/index.ts';
import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import {
  combinations,
  findFramingWood,
  findGradedLumber,
  type FoundGradedLumber,
  type GradedLumber,
} from '../../catalogue/index.ts';

type Wall = NonNullable<BracketShelfDocument['wall']>;

/** The rows a stud may be of: the one of its name, or one of every wood where none is named; or why there is none. */
export type StudLumber =
  | { readonly rows: readonly [GradedLumber, ...GradedLumber[]]; readonly isNamed: boolean }
  | { readonly why: string };

/** Nominal width of a stud by its depth, inches. */
export function nominalOf(depth_m: number): number {
  const dressed = [3.5, 4.5, 5.5, 7.25, 9.25, 11.25].findIndex((most) => depth_m / inch <= most + 1e-6);
  return [4, 5, 6, 8, 10, 12][dressed] ?? 14;
}

/**
 * What a stud may be of. From 8 in on the grade Stud has the values of No. 3 (NDS Supplement, Table 4A); a wood that is
 * named and has no row is not taken for another.
 */
export function studLumber({ species, grade }: Wall, nominal_in: number): StudLumber {
  const usual = nominal_in > 6 ? 'No.3' : 'Stud';
  const wanted = grade === undefined || grade === 'Stud' ? usual : grade;
  if (species !== undefined) {
    const framing = findFramingWood(species);
    const name = framing.ok ? framing.row.name : species;
    const found = findGradedLumber(name, wanted, nominal_in);
    return found.ok ? { rows: [found.row], isNamed: true } : { why: whyNone(found, name, wanted) };
  }
  const [first, ...rest] = combinations.flatMap(({ name }) => {
    const found = findGradedLumber(name, wanted, nominal_in);
    return found.ok ? [found.row] : [];
  });
  if (first === undefined) {
    return {
      why: `No wood of the tables has a grade ${wanted}. Name the grade that is stamped on the studs.`,
    };
  }
  return { rows: [first, ...rest], isNamed: false };
}

function whyNone(found: Extract<FoundGradedLumber, { ok: false }>, name: string, grade: string): string {
  if (found.reason === 'unknown-name') {
    const known = combinations.map((each) => each.name).join(', ');
    return `The tables have no bending values of studs of ${name}. Name the lumber they are stamped as, if it is one of these: ${known}.`;
  }
  if (found.reason === 'no-such-grade') {
    return `The tables have no grade ${grade} of ${found.combination}. Name the grade that is stamped on the studs, if it is one of these: ${[...found.nearest].sort().join(', ')}.`;
  }
  return `The tables have no ${found.combination}, grade ${found.grade}, as wide as these studs are deep.`;
}
