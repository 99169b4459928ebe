import { coveringsOf, coveringThickness } from '../../calc/elements/fixing/coverings.ts';
import type { BracketShelfDocument, WallDocument } from '../../shared/check-document/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';
import { missesOf, placesOf, type Miss } from './misses.ts';
import { screwOffsets, screwSizes } from './screws.ts';
import { inch } from '../../shared/quantity/index.ts';

type Brackets = BracketShelfDocument['brackets'];
type Framing = NonNullable<NonNullable<BracketShelfDocument['wall']>['framing']>;

const thinMetal_m = 0.25 * inch;
const usualStud_m = { width: 1.5 * inch, depth: 3.5 * inch };
const usualBlocking_m = 1.5 * inch;
const usualSheathing_m = (7 / 16) * inch;

/** What an enlarged bracket shows, in m: heights from the plate's lower end, distances from its middle and from the wall finish. */
export interface Detail {
  readonly plate: NonNullable<Brackets['plate']> & { readonly thickness: number };
  readonly screws: NonNullable<Brackets['screws']>;
  readonly offsets: readonly number[];
  readonly diameter: number;
  readonly head: number;
  readonly thread: number;
  /** The stud behind the plate; none where no stud is met or known. */
  readonly studs: readonly { readonly from: number; readonly to: number }[];
  readonly misses: readonly Miss[];
  readonly coverings: readonly { readonly material: string; readonly thickness: number }[];
  readonly gap: number;
  /** How deep the wall is behind its coverings, and whether that is known. */
  readonly behind: number;
  readonly isHollow: boolean;
  readonly penetration: number;
  readonly into: string;
  /** Whether an arm goes out from the plate. */
  readonly hasArm: boolean;
}

const into: Readonly<Record<Framing, string>> = {
  'wood-stud': 'into the stud',
  blocking: 'into the blocking',
  sheathing: 'into the sheathing',
  'metal-stud': 'behind the face',
  masonry: 'into the masonry',
  concrete: 'into the concrete',
  hollow: 'behind the face',
};

/** Plate, screws and wall as the detail shows them; undefined where plate, screws or wall are not given. */
export function detailOf(document: WallDocument, result: CheckResult): Detail | undefined {
  const { wall } = document;
  const { plate, screws } = partsOf(document);
  if (plate === undefined || screws === undefined || wall === undefined) return undefined;
  const framing = wall.framing ?? 'wood-stud';
  const thickness = plate.thickness ?? thinMetal_m / 2;
  const coverings = coveringsOf(wall);
  const gap = coveringThickness(wall);
  const sizes = screwSizes(screws);
  const misses = missesOf(document, result);
  const studs = framing === 'wood-stud' || framing === 'metal-stud' ? studBehind(document, result) : [];
  const isBesideStud = misses.length > 0 && studs.length === 0;
  return {
    plate: { ...plate, thickness },
    screws,
    offsets: screwOffsets({ plate, screws }),
    diameter: sizes.diameter_m,
    head: sizes.head_m,
    thread: Math.min(screws.thread ?? (screws.length * 2) / 3, screws.length - thickness),
    studs,
    misses,
    coverings,
    gap,
    behind:
      framing === 'sheathing'
        ? (wall.sheathing ?? usualSheathing_m)
        : (wall.studDepth ?? (framing === 'blocking' ? usualBlocking_m : usualStud_m.depth)),
    isHollow: framing === 'hollow' || isBesideStud,
    penetration: result.fixings[0]?.penetration.value ?? Math.max(0, screws.length - thickness - gap),
    into: isBesideStud ? into.hollow : into[framing],
    hasArm: document.element === 'bracket-shelf',
  };
}

/** Plate and screws, wherever the document has them. */
function partsOf(document: WallDocument): Pick<Brackets, 'plate' | 'screws'> {
  return document.element === 'bracket-shelf' ? document.brackets : document;
}

/** Edges of the stud behind the bracket that misses most; behind all of them where none does. */
function studBehind(document: WallDocument, { fixings }: CheckResult): Detail['studs'] {
  const { wall } = document;
  const places = placesOf(document);
  const shifts = fixings.flatMap(({ bracket, stud }) => {
    const at = places[bracket - 1];
    return stud === null || at === undefined ? [] : [stud.value - at];
  });
  const [first] = shifts.length === 0 ? centred(document) : shifts;
  if (first === undefined) return [];
  const shift = shifts.reduce(
    (worst, each) => (Math.abs(each) > Math.abs(worst) + 1e-9 ? each : worst),
    first,
  );
  const half = (wall?.studWidth ?? usualStud_m.width) / 2;
  const isBehind = Math.abs(shift) < half + (partsOf(document).plate?.width ?? 0) / 2;
  return isBehind ? [{ from: shift - half, to: shift + half }] : [];
}

/** A plate alone whose place among the studs nobody gives is taken to stand on the middle of one. */
function centred(document: WallDocument): number[] {
  if (document.element !== 'wall-fixing') return [];
  return document.position === undefined || document.wall.studs === undefined ? [0] : [];
}
