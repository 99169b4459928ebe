import { lowerFirst } from '../../../shared/words.ts';
import { fasteners, findFastener, type Fastener } from '../../catalogue/index.ts';
import { inch, show, writeLength } from '../../../shared/quantity/index.ts';
import { metresOf, screwStep_m } from '../stock-sizes.ts';
import { effortOf, type Change, type Family, type Trouble } from './change.ts';

type Screws = NonNullable<Trouble['input']['brackets']['screws']>;

const mostSteps = 6;
const usualStudDepth_m = 3.5 * inch;

/** Longer wall screws, in steps, until they would come out of the wood behind. */
export function longerScrews(trouble: Trouble): Family {
  const { shelf } = trouble;
  const { screws, plate } = shelf.document.brackets;
  const { wall } = shelf.document;
  if (screws === undefined || wall === undefined) return none;
  const step = screwStep_m[shelf.system];
  const coverings = (wall.coverings ?? []).reduce((sum, { thickness }) => sum + thickness, 0);
  const wood = wall.framing === 'sheathing' ? (wall.sheathing ?? step) : (wall.studDepth ?? usualStudDepth_m);
  const longest = (plate?.thickness ?? 0) + coverings + wood;
  const first = Math.floor(screws.length / step + 1e-6) + 1;
  const lengths = Array.from({ length: mostSteps }, (_, k) => (first + k) * step);
  return {
    touches: 'wall',
    changes: lengths
      .filter((length) => length <= longest + 1e-9)
      .map((length) => {
        const words = `${show(length, 'm', shelf.system)} long instead of ${show(screws.length, 'm', shelf.system)}`;
        return change(trouble, 'screw-length', `Wall screws ${words}.`, (given) => {
          const { thread: _, ...others } = given;
          return { ...others, length: writeLength(length, shelf.system).text };
        });
      }),
  };
}

/** Thicker wall screws of the same kind; after the thickest wood screw, lag screws. */
export function thickerScrews(trouble: Trouble): Family {
  const { screws } = trouble.shelf.document.brackets;
  const found = screws === undefined ? undefined : findFastener(screws.fastener);
  if (found?.ok !== true) return none;
  const present = found.row;
  const kinds: readonly Fastener['kind'][] =
    present.kind === 'common-nail' ? ['wood-screw', 'lag-screw'] : [present.kind, 'lag-screw'];
  const thicker = kinds.flatMap((kind, index) =>
    fasteners.filter(
      (row) =>
        row.kind === kind &&
        row.diameter_m > present.diameter_m &&
        kinds.indexOf(kind) === index &&
        row.diameter_m < 0.009,
    ),
  );
  return {
    touches: 'wall',
    changes: thicker.map((row) =>
      change(trouble, 'screw-size', `${row.name}, in place of ${lowerFirst(present.name)}.`, (given) => {
        const { thread: _, ...others } = given;
        return { ...others, fastener: row.id };
      }),
    ),
  };
}

/** One more height of screws, high up, where it holds most of the couple. */
export function moreScrews(trouble: Trouble): Family {
  const { shelf } = trouble;
  const { screws, plate } = shelf.document.brackets;
  if (screws === undefined || plate === undefined || screws.heights.length >= 12) return none;
  const [highest = 0, second = 0] = [...screws.heights].sort((a, b) => b - a);
  const found = findFastener(screws.fastener);
  const apart = Math.max(inch, found.ok ? 4 * found.row.diameter_m : 0);
  const places = [(highest + second) / 2, highest - apart].filter(
    (at) => at > apart && screws.heights.every((height) => Math.abs(height - at) >= apart - 1e-9),
  );
  return {
    touches: 'wall',
    changes: [...new Set(places)].map((at) => {
      const height = writeLength(at, shelf.system);
      const words = `One more screw in each plate, ${show(height.value, 'm', shelf.system)} above its lower end: ${screws.heights.length + 1} heights in all.`;
      return change(trouble, 'more-screws', words, (given) => ({
        ...given,
        heights: [...given.heights, height.text].sort((a, b) => metresOf(b) - metresOf(a)),
      }));
    }),
  };
}

const none: Family = { touches: 'wall', changes: [] };

function change(
  { input }: Trouble,
  kind: 'screw-length' | 'screw-size' | 'more-screws',
  what: string,
  edit: (given: Screws) => Screws,
): Change {
  const { screws } = input.brackets;
  const edited = screws === undefined ? {} : { screws: edit(screws) };
  return {
    kind,
    what,
    effort: effortOf[kind],
    input: { ...input, brackets: { ...input.brackets, ...edited } },
  };
}
