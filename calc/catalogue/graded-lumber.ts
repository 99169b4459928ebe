import { readCombinations, readGradedLumber } from './graded-lumber-row.ts';
import { NameIndex } from './name-index.ts';
import { nearest, words } from './nearest.ts';
import { tableText } from './table.ts';
import type { Found, FoundGradedLumber, GradedLumber, LumberCombination } from './types.ts';

/** The combinations, and every row of graded lumber. */
export const combinations: readonly LumberCombination[] = readCombinations(
  tableText('lumber-combinations.csv'),
  'lumber-combinations.csv',
);
export const gradedLumber: readonly GradedLumber[] = readGradedLumber(
  tableText('graded-lumber.csv'),
  'graded-lumber.csv',
);

/** The names combinations are looked up by. */
export const combinationIndex: NameIndex<LumberCombination> = new NameIndex(
  combinations,
  'lumber combinations',
);

for (const row of gradedLumber) {
  const combination = combinations.find(({ name }) => name === row.combination);
  if (combination?.specificGravity !== row.specificGravity) {
    throw new Error(`graded-lumber.csv: ${row.id} is of no combination with its name and specific gravity`);
  }
}

/** A combination by any of its names (`SPF`, `spruce-pine-fir`), or the nearest names. */
export function findCombination(name: string): Found<LumberCombination> {
  const row = combinationIndex.find(name);
  return row === undefined ? combinationIndex.unknown(name) : { ok: true, row };
}

/**
 * Graded lumber by combination, grade and nominal width.
 *
 * @param combination any name of the combination
 * @param grade the stamp: `No.2`, `No. 2`, `#2`, `2`, `Select Structural`; a stamp that covers two grades is found by either
 * @param nominalWidth_in the nominal width of the wide face: 8 for a 2 × 8
 * @returns the row; or the nearest combinations, the grades of this one, or the widths of this grade
 */
export function findGradedLumber(
  combination: string,
  grade: string,
  nominalWidth_in: number,
): FoundGradedLumber {
  const found = findCombination(combination);
  if (!found.ok) return found;
  const { name } = found.row;
  const ofCombination = gradedLumber.filter((row) => row.combination === name);
  const wanted = gradeKey(grade);
  const ofGrade = ofCombination.filter((row) => gradeKeys(row.grade).includes(wanted));
  const [first] = ofGrade;
  if (first === undefined) {
    const grades = [...new Set(ofCombination.map((row) => row.grade))];
    return {
      ok: false,
      reason: 'no-such-grade',
      combination: name,
      nearest: nearest(grade, grades, grades.length),
    };
  }
  const row = ofGrade.find(
    (each) => each.nominalWidthFrom_in <= nominalWidth_in && nominalWidth_in <= each.nominalWidthTo_in,
  );
  if (row !== undefined) return { ok: true, row };
  const widths = ofGrade.map((each) => ({
    from_in: each.nominalWidthFrom_in,
    to_in: each.nominalWidthTo_in,
  }));
  return { ok: false, reason: 'no-such-width', combination: name, grade: first.grade, nearest: [], widths };
}

/** One spelling for the ways a grade is written: `No.2`, `no 2`, `#2` and `2` are `2`; `2&btr` is `2 and better`. */
function gradeKey(grade: string): string {
  return words(grade.slice(0, 80))
    .join(' ')
    .replace(/\b(?:no|number|grade) ?(?=\d)/g, '')
    .replace(/\b(\d) ?(?:and )?(?:btr|better)\b/g, '$1 and better')
    .replace(/^(?:select structural|sel str)$/, 'ss');
}

/**
 * What a row's grade is found by: its name, each of two grades that one row covers, and the stamp of a mixed lot ("2 and
 * better"), whose worst board is of the lower grade. No.1 & better is a grade of its own.
 */
function gradeKeys(grade: string): string[] {
  const keys = [grade, ...grade.split(/\/| and /)].map(gradeKey);
  return keys.flatMap((each) => (/^[23]$/.test(each) ? [each, `${each} and better`] : [each]));
}
