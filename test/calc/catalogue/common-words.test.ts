import { describe, expect, it } from 'vitest';
import {
  commonWordSaid,
  findSpecies,
  notSure,
  notSureStandsIn,
  rowOfCommonWord,
  searchBoards,
  sourceOf,
  species,
  woodKinds,
  type Species,
} from '../../../calc/catalogue/index.ts';
import { check } from '../../../calc/index.ts';
import { DocumentError } from '../../../shared/check-document/index.ts';
import { demoCheck } from '../../../server/demo.ts';

const psi = 6894.757;
const woodsOf = (row: Species): Species[] => {
  const names = row.drawn?.woods.split(/, | and /) ?? [];
  return species.filter(({ name }) => names.includes(name));
};

const { nosing: _, ...plainBoard } = demoCheck.board;
const withWood = (material: string): unknown => ({
  ...demoCheck,
  board: { ...plainBoard, material },
});

function errorsOf(material: string): string {
  try {
    check(withWood(material));
  } catch (error) {
    if (error instanceof DocumentError) return error.errors.map(({ message }) => message).join('\n');
    throw error;
  }
  return '';
}

describe('a common word for several woods', () => {
  it.each([
    'oak',
    'Oak',
    'maple',
    'pine',
    'fir',
    'spruce',
    'birch',
    'ash',
    'cedar',
    'pine board',
    'solid oak',
  ])('"%s" is refused, with the woods it may be and the row for whoever cannot tell', (name) => {
    expect(findSpecies(name).ok).toBe(false);
    const row = rowOfCommonWord(name);
    const said = errorsOf(name);
    expect(row?.drawn).toBeTruthy();
    expect(said).toContain(`"${row?.name ?? ''}" is safe`);
    for (const { name: wood } of row === undefined ? [] : woodsOf(row)) expect(said).toContain(wood);
  });

  // Wood Handbook (FPL-GTR-282) Table 5-3b: of the red and white oaks sold as oak southern red oak is the lowest, 6,900 psi in
  // green bending and 1.49 Mpsi at 12 %; of the maples silver maple, 5,800 psi and 1.14 Mpsi.
  it.each([
    ['oak', 6900, 1.49],
    ['maple', 5800, 1.14],
  ])('%s has the values of the lowest', (word, bending_psi, stiffness_Mpsi) => {
    const row = rowOfCommonWord(word);
    expect((row?.green?.modulusOfRupture_Pa ?? NaN) / psi).toBeCloseTo(bending_psi, 0);
    expect((row?.dry.modulusOfElasticity_Pa ?? NaN) / psi / 1e6).toBeCloseTo(stiffness_Mpsi, 2);
  });

  it.each(woodKinds.map((row) => [row.name, row] as const))(
    '%s is no stronger and no stiffer than any of its woods, and no lighter',
    (name, row) => {
      const woods = woodsOf(row);
      expect(woods.length).toBeGreaterThan(1);
      for (const wood of woods) {
        for (const state of ['green', 'dry'] as const) {
          for (const value of [
            'modulusOfRupture_Pa',
            'modulusOfElasticity_Pa',
            'shear_Pa',
            'compressionPerp_Pa',
            'tensionPerp_Pa',
            'specificGravity',
          ] as const) {
            expect(row[state]?.[value] ?? NaN, `${wood.name} ${state} ${value}`).toBeLessThanOrEqual(
              wood[state]?.[value] ?? Infinity,
            );
          }
        }
        expect(row.density_kgm3).toBeGreaterThanOrEqual(wood.density_kgm3);
      }
      const found = findSpecies(name);
      expect(found.ok && found.row).toBe(row);
    },
  );

  // A plain board: with a strip of another wood, less stiffness of one piece asks less of that piece.
  it('bends, shears, bears and moves no less of what is allowed than each of the woods it may be', () => {
    const used = (material: string): Map<string, number> =>
      new Map(check(withWood(material)).checks.map(({ id, ratio }) => [id, ratio ?? 0]));
    for (const word of ['oak', 'maple', 'pine', 'fir']) {
      const row = rowOfCommonWord(word);
      if (row === undefined) throw new Error(word);
      const unknown = used(row.name);
      for (const wood of woodsOf(row)) {
        for (const [id, ratio] of used(wood.name)) {
          if (!/^(?:bending|shear|bearing|deflection)/.test(id)) continue;
          expect(unknown.get(id) ?? NaN, `${wood.name} ${id}`).toBeGreaterThanOrEqual(ratio - 1e-9);
        }
      }
    }
  });

  it('is said on the sheet, with the wood each value is of', () => {
    const result = check(withWood('Oak, kind not known'));
    expect(result.assumptions.join('\n')).toContain('Oak, kind not known: the weakest, softest');
    const bending = result.provenance.values.find(({ what }) => what.includes('bending strength'));
    expect(bending?.provenance).toContain(
      'that of Southern red oak, of Northern red oak, Southern red oak and White oak',
    );
  });

  it('comes first in the search, and finds its woods by its own name too', () => {
    expect(searchBoards('oak')[0]?.name).toBe('Oak, kind not known');
    expect(searchBoards('oak, kind not known')).toEqual(searchBoards('oak'));
    expect(searchBoards('red oak')[0]?.id).toBe('northern-red-oak');
  });
});

describe('a word that names no wood', () => {
  it.each(['butcher block', 'butcherblock', 'solid wood', 'hardwood board', 'wood'])(
    '"%s" is refused, and "not sure" is offered',
    (name) => {
      expect(rowOfCommonWord(name)).toBe(notSure());
      expect(errorsOf(name)).toContain('"not sure" takes the lowest');
    },
  );

  it('is not every word: what is like nothing has the nearest names alone', () => {
    expect(rowOfCommonWord('')).toBeUndefined();
    expect(rowOfCommonWord('xyzzy')).toBeUndefined();
    expect(errorsOf('suger mapel')).toContain('Nearest: Sugar maple');
  });
});

describe('a panel where a wood is asked for, or a face veneer', () => {
  it('is told to be one', () => {
    expect(commonWordSaid('plywood', false)).toContain('"plywood" is a panel');
    expect(commonWordSaid('plywood', true)).toBe('');
    expect(errorsOf('oak plywood')).toContain('"particleboard" is safe, the weakest core');
  });

  it('is told to be one where a top of staves is asked for', () => {
    expect(commonWordSaid('MDF', false)).toContain('is a panel');
  });
});

describe('where a value of a wood not known is from', () => {
  it('is the one wood whose value it is, not the list of all', () => {
    // Wood Handbook Table 5-3b: of shelf woods western white pine is the weakest in green bending (4,700 psi).
    const { provenance } = sourceOf(notSure(), 'green bending');
    expect(provenance).toContain('that of Western white pine');
    expect(provenance).not.toContain('dry stiffness');
    expect(provenance.length).toBeLessThan(300);
  });

  it('is that of the row itself for a wood that grows, and nothing else of the row', () => {
    const [alder] = species;
    if (alder === undefined) throw new Error('no species');
    const { source, provenance } = alder;
    expect(sourceOf(alder, 'green bending')).toEqual({ source, provenance });
  });
});

describe('a wood without green values', () => {
  it.each(['European beech', 'European oak', 'Scots pine'])(
    '%s is refused, with an answer that is safe for it',
    (name) => {
      expect(errorsOf(name)).toContain('It takes another species. "Not sure" is safe in its place');
      expect(errorsOf('not sure')).toBe('');
    },
  );

  // Wood Handbook, Table 5-5b (memory): bending strength dry of okoume 7 400, of balsa 3 140 psi; western white pine and others
  // that a board is likely to be are stronger. Ipe is heavier than any of them.
  it.each(['Okoume', 'Balsa', 'Limba', 'Ipe'])(
    '%s is offered nothing: it is weaker, less stiff or heavier',
    (name) => {
      expect(errorsOf(name)).toContain('It takes another species.');
      expect(errorsOf(name)).not.toContain('Not sure');
    },
  );

  it('is vouched for only where bending, stiffness, shear and specific gravity are in print and no less, and it is no heavier', () => {
    const beech = species.find(({ id }) => id === 'european-beech');
    if (beech === undefined) throw new Error('no beech');
    expect(notSureStandsIn(beech)).toBe(true);
    const least = notSure();
    const changed = (dry: object, other: object = {}): Species => ({
      ...beech,
      ...other,
      dry: { ...beech.dry, ...dry },
    });
    for (const key of [
      'modulusOfRupture_Pa',
      'modulusOfElasticity_Pa',
      'shear_Pa',
      'specificGravity',
    ] as const) {
      expect(notSureStandsIn(changed({ [key]: (least.dry[key] ?? NaN) * 0.99 })), key).toBe(false);
      expect(notSureStandsIn(changed({ [key]: null })), key).toBe(false);
    }
    expect(notSureStandsIn(changed({}, { density_kgm3: least.density_kgm3 * 1.01 }))).toBe(false);
  });
});
