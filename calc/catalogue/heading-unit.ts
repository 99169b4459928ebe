import { parseQuantity, type Kind } from '../../shared/quantity/index.ts';

interface HeadingUnit {
  readonly kind: Kind;
  readonly unit: string;
  readonly times: number;
  readonly becomes: string;
}

/** Units a heading may end in (`bending_psi`), and the SI ending its numbers are given under (`bending_Pa`). */
const headingUnits: Readonly<Record<string, HeadingUnit>> = {
  psi: { kind: 'stress', unit: 'psi', times: 1, becomes: 'Pa' },
  ksi: { kind: 'stress', unit: 'ksi', times: 1, becomes: 'Pa' },
  Mpsi: { kind: 'stress', unit: 'psi', times: 1e6, becomes: 'Pa' },
  MPa: { kind: 'stress', unit: 'MPa', times: 1, becomes: 'Pa' },
  in: { kind: 'length', unit: 'in', times: 1, becomes: 'm' },
  mm: { kind: 'length', unit: 'mm', times: 1, becomes: 'm' },
  psf: { kind: 'area-load', unit: 'psf', times: 1, becomes: 'Npm2' },
  kgm3: { kind: 'density', unit: 'kg/m3', times: 1, becomes: 'kgm3' },
};

/**
 * A cell under a heading that ends in a unit, as an SI number; fractions such as `5/32` are read too.
 *
 * @param heading the heading as it stands in the table
 * @param cell the text of the cell
 * @returns null where the heading has no unit; else the heading with the SI unit and the value, null for an empty cell
 * @throws Error where the cell is not a number
 */
export function underHeading(heading: string, cell: string): { name: string; value: number | null } | null {
  const [, stem, ending] = /^(.+)_([^_]+)$/.exec(heading) ?? [];
  const headingUnit = ending === undefined ? undefined : headingUnits[ending];
  if (headingUnit === undefined) return null;
  const name = `${stem}_${headingUnit.becomes}`;
  if (cell === '') return { name, value: null };
  if (!/^[\d./]+$/.test(cell)) throw new Error(`"${cell}" is not a number`);
  const parsed = parseQuantity(cell, headingUnit.kind, headingUnit.unit);
  if (!parsed.ok) throw new Error(parsed.message);
  return { name, value: fifteenFigures(parsed.value * headingUnit.times) };
}

/** So that 0.19 in is 0.004826 m and no neighbour of it. */
function fifteenFigures(value: number): number {
  return Number(value.toPrecision(15));
}
