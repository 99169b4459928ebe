import { inch, show } from '../../../shared/quantity/index.ts';
import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import { listed } from '../../../shared/words.ts';
import { findCombination, findFastener, findFramingWood, findSpecies } from '../../catalogue/index.ts';
import { panelG, panelGravity } from '../panel-gravity.ts';
import { backingOf } from './backing.ts';
import { coveringThickness, isFramed } from './coverings.ts';
import { blockingSize, heightBehind } from './blocking.ts';
import type { Fixing, Ground } from './fixing.ts';
import { turningOf } from './turning.ts';
import { penetrationOf, reachOf, usualThread_m } from './values.ts';

const namedFramingG = 0.42;
const unknownFramingG = 0.36;
/** Stiffness no stud of NDS Supplement Table 4A is below (memory): it only enters the group factor, which falls with it. */
const studE_Pa = 0.6e6 * 6894.757293168;
const usualPlateThickness_m = inch / 8;

type Wall = NonNullable<BracketShelfDocument['wall']>;
type Brackets = Pick<BracketShelfDocument['brackets'], 'plate' | 'screws' | 'capacity'>;

/** A fixing with what was not given filled in, or null where plate, screws or wall are missing. */
export interface FixingReading {
  readonly fixing: Fixing | null;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Reads plate, screws and wall into a fixing; says what it had to assume. */
export function readFixing(
  { plate, screws, capacity }: Brackets,
  wall: Wall | undefined,
  conditions: BracketShelfDocument['conditions'],
  system: UnitSystem,
): FixingReading {
  if (plate === undefined || screws === undefined || wall === undefined)
    return { fixing: null, assumptions: [], warnings: [] };
  const assumptions: string[] = [];
  const assume = <T>(given: T | undefined, usual: T, words: string): T => {
    if (given === undefined) assumptions.push(words);
    return given ?? usual;
  };
  const found = findFastener(screws.fastener);
  const fastener = found.ok ? found.row : null;
  const ground = groundOf(wall, assumptions);
  const thread_m =
    screws.thread ?? (fastener === null ? screws.length : usualThread_m(fastener, screws.length));
  if (screws.thread === undefined && fastener !== null && fastener.kind !== 'common-nail') {
    assumptions.push('The thread of the wall screws is taken as NDS Appendix L has it.');
  }
  if (fastener?.kind === 'common-nail' && screws.driven === undefined)
    assumptions.push('Nails are driven straight, not toed in.');
  if (screws.driven === 'toe')
    assumptions.push('Nails toed in stand at 30° to the square of the wall (NDS Figure 12A).');
  const perHeight = screws.perHeight ?? 1;
  if (perHeight > 1 && screws.across === undefined)
    assumptions.push("The outer screws at one height stand half the plate's width apart.");
  const gap_m = coveringThickness(wall);
  assumptions.push(...coveringWords(wall));
  if (gap_m > 0 && wall.bearing === undefined) {
    assumptions.push(
      'The couple on a plate presses its lower end against the wall: solid backing is assumed there. No bearing value of the covering is published; where it is soft, pack behind the plate.',
    );
  }
  assumptions.push(
    'Friction of the plate on the wall counts for nothing; the plate is stiff and turns about the end that is pressed on the wall.',
  );
  const fixing: Fixing = {
    system,
    plate: {
      height_m: plate.height,
      width_m: plate.width,
      thickness_m:
        capacity?.basis === 'steel'
          ? assume(
              plate.thickness,
              Math.min(capacity.thickness, capacity.width),
              'Bracket plates as thick as the arms.',
            )
          : assume(
              plate.thickness,
              usualPlateThickness_m,
              'A plate 1/8 in thick (common practice, no source).',
            ),
    },
    fastener,
    allowable:
      screws.allowable === undefined
        ? null
        : {
            tension_N: screws.allowable.tension,
            shear_N: screws.allowable.shear,
            report: screws.allowable.report,
          },
    length_m: screws.length,
    thread_m,
    driven: screws.driven ?? 'straight',
    heights_m: screws.heights,
    perHeight,
    across_m: perHeight > 1 ? (screws.across ?? plate.width / 2) : 0,
    gap_m,
    ground,
    blockingHeight_m: wall.framing === 'blocking' ? heightBehind(wall, screws.heights, fastener) : null,
    moisture: conditions?.moisture ?? 'dry',
    temperature: conditions?.temperature ?? 'ordinary',
    coveringBearing_Pa: wall.bearing?.allowable ?? null,
  };
  return { fixing, assumptions: [...assumptions, ...backingWords(fixing)], warnings: reportWarning(fixing) };
}

/** What is taken of the coverings of a wall of which nobody says any. */
function coveringWords(wall: Wall): string[] {
  if (wall.coverings !== undefined) return [];
  return [
    isFramed(wall.framing)
      ? 'Gypsum board 1/2 in thick covers the wall where the plates stand: nobody says what does, or that nothing does (common practice, no source).'
      : 'Nothing covers the wall where the plates stand.',
  ];
}

/** Where a plate turns that reaches below its blocking. */
function backingWords(fixing: Fixing): string[] {
  const { from_m } = backingOf(fixing, turningOf(fixing, {}));
  return from_m > 0
    ? [
        `The blocking stands as low as its screws let it, and the plate turns about its lower edge, ${show(from_m, 'm', fixing.system)} above the lower end of the plate: below that there is nothing solid behind it.`,
      ]
    : [];
}

/** What has to be looked up in a report: its two values are taken as they stand. */
function reportWarning(fixing: Fixing): string[] {
  const { allowable, gap_m, ground, moisture, system } = fixing;
  if (allowable === null) return [];
  const depth_m = ground.kind === 'wood' ? penetrationOf(fixing, ground) : reachOf(fixing);
  const given = [
    ...(gap_m > 0 ? [`with the plate held ${show(gap_m, 'm', system)} off by what covers the wall`] : []),
    `${show(depth_m, 'm', system)} deep in what is behind`,
    'at these spacings and distances to edges',
    ...(moisture === 'wet' ? ['in a wet place'] : []),
  ];
  return [
    `The allowable pull and shear of the wall screws are taken as they stand. Look up in their report that they count ${listed(given)}: none of this is checked.`,
  ];
}

function groundOf(wall: Wall, assumptions: string[]): Ground {
  const framing = wall.framing ?? 'wood-stud';
  if (framing === 'hollow') return { kind: 'hollow' };
  if (framing === 'masonry' || framing === 'concrete') return { kind: 'by-report', what: framing };
  if (framing === 'metal-stud') return { kind: 'by-report', what: 'metal studs' };
  if (wall.framing === undefined) assumptions.push('The framing is not stated: wood studs are taken.');
  const G = gravityOf(wall, framing, assumptions);
  if (G === null) return { kind: 'by-report', what: wall.species ?? '' };
  if (framing === 'sheathing') {
    const depth_m = wall.sheathing ?? (7 / 16) * inch;
    if (wall.sheathing === undefined)
      assumptions.push('Sheathing 7/16 in thick (common practice, no source).');
    return { kind: 'wood', G, angle_deg: 90, grain: 'side', depth_m, width_m: 0.3, E_Pa: studE_Pa };
  }
  const blocking = framing === 'blocking' ? blockingSize(wall) : null;
  if (blocking !== null) assumptions.push(...blocking.assumptions);
  const depth_m = blocking?.depth_m ?? wall.studDepth ?? 3.5 * inch;
  const width_m = wall.studWidth ?? 1.5 * inch;
  if (blocking === null && (wall.studDepth === undefined || wall.studWidth === undefined)) {
    assumptions.push('Framing 1-1/2 × 3-1/2 in where its size is not given (common practice, no source).');
  }
  const grain = wall.grain ?? 'side';
  if (wall.grain === undefined)
    assumptions.push('The screws go into the side of the wood, not into its end.');
  const angle_deg = framing === 'blocking' || grain === 'end' ? 90 : 0;
  return { kind: 'wood', G, angle_deg, grain, depth_m, width_m, E_Pa: studE_Pa };
}

/** Specific gravity of what the screws go into; null where the NDS has no value for it. */
function gravityOf(wall: Wall, framing: string, assumptions: string[]): number | null {
  if (wall.species !== undefined) return gravityByName(wall.species, framing);
  if (wall.framing === undefined) {
    assumptions.push(
      'The wood of the wall is not known: specific gravity 0.36, the lowest of common framing.',
    );
    return unknownFramingG;
  }
  if (framing === 'sheathing') {
    assumptions.push('Sheathing of specific gravity 0.42, plywood of any grade (NDS Table 12.3.3B).');
    return panelG.plywood;
  }
  assumptions.push('Framing of specific gravity 0.42, as spruce-pine-fir (common practice, no source).');
  return namedFramingG;
}

/**
 * Specific gravity of framing or sheathing by name; null where the NDS gives none: a panel other than plywood and OSB,
 * or one whose face the screws do not go into.
 */
function gravityByName(name: string, framing: string): number | null {
  const known = findFramingWood(name);
  if (known.ok) return known.row.specificGravity;
  const lumber = findCombination(name);
  if (lumber.ok) return lumber.row.specificGravity;
  const panel = panelGravity(name);
  if (panel !== undefined) return framing === 'wood-stud' ? null : panel;
  const species = findSpecies(name);
  return species.ok ? species.row.dry.specificGravity : null;
}
