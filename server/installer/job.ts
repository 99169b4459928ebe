import { findFastener } from '../../calc/catalogue/index.ts';
import { boardScrewsOf } from '../../calc/elements/bracket-shelf/board-screws.ts';
import { readShelf } from '../../calc/elements/bracket-shelf/read-shelf.ts';
import { readFixing } from '../../calc/elements/fixing/read-fixing.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import type { UnitSystem } from '../../shared/quantity/index.ts';
import { drillFor } from './drill.ts';
import { leadHole } from '../../calc/standards/nds-2018/12.1-holes.ts';
import { screwName } from './screw-words.ts';

/** Bits for one kind of screw; empty words where there is nothing to bore. */
export interface Bore {
  readonly thread: string;
  readonly shank: string;
  readonly isNeeded: boolean;
  readonly clause: string;
}

/** Screws into the wall, as they are bought and bored for. Lengths in m. */
export interface WallScrews {
  readonly name: string;
  readonly length_m: number;
  readonly count: number;
  readonly each: number;
  readonly heights_m: readonly number[];
  readonly bore: Bore | undefined;
  /** Depth of the hole from the face of the wall, and of its wider part. */
  readonly depth_m: number;
  readonly shankDepth_m: number;
  readonly report: string;
}

/** Screws up through the arms into the board. */
export interface ArmScrews {
  readonly name: string;
  readonly length_m: number;
  readonly count: number;
  readonly each: number;
  readonly bore: Bore | undefined;
  /** How far the hole goes into the board. */
  readonly depth_m: number;
  /** Solid wood held at more than one depth: all holes but the rearmost must let it move. */
  readonly needsSlots: boolean;
}

/** What an installer needs to know that is not drawn; undefined where the document doesn't say. */
export interface Job {
  readonly wall: WallScrews | undefined;
  readonly arms: ArmScrews | undefined;
}

const worthAWiderHole_m = 0.002;

/** Reads the screws of a shelf and the holes for them. */
export function jobOf(document: BracketShelfDocument): Job {
  return { wall: wallScrews(document), arms: armScrews(document) };
}

function wallScrews(document: BracketShelfDocument): WallScrews | undefined {
  const { brackets, wall, conditions, units = 'inch-pound' } = document;
  const { fixing } = readFixing(brackets, wall, conditions, units);
  const { screws } = brackets;
  if (fixing === null || screws === undefined) return undefined;
  const each = fixing.heights_m.length * fixing.perHeight;
  const { ground, fastener, plate, length_m, thread_m, gap_m, allowable } = fixing;
  const bore =
    allowable === null && ground.kind === 'wood' ? boreFor(fastener?.id ?? '', ground.G, units) : undefined;
  const shankDepth_m = Math.max(0, length_m - thread_m - plate.thickness_m);
  return {
    name: screwName(screws.fastener),
    length_m,
    count: each * brackets.positions.length,
    each,
    heights_m: [...new Set(fixing.heights_m)].toSorted((a, b) => a - b),
    bore,
    depth_m: Math.max(0, length_m - plate.thickness_m),
    shankDepth_m: shankDepth_m > gap_m + worthAWiderHole_m ? shankDepth_m : 0,
    report: allowable?.report ?? '',
  };
}

function armScrews(document: BracketShelfDocument): ArmScrews | undefined {
  const reading = readShelf(document);
  if (!reading.ok || reading.shelf.hold !== 'screwed') return undefined;
  const { shelf } = reading;
  const screws = boardScrewsOf(shelf);
  const G = shelf.board.onArms.material.specificGravity;
  return {
    name: screwName(screws.fastener),
    length_m: screws.length_m,
    count: screws.count * shelf.positions_m.length,
    each: screws.count,
    bore: G === null ? undefined : boreFor(screws.fastener, G, shelf.system),
    depth_m: Math.max(0, screws.length_m - screws.armThickness_m),
    needsSlots: screws.count > 1 && shelf.board.onArms.material.basis !== 'panel',
  };
}

function boreFor(fastener: string, G: number, units: UnitSystem): Bore | undefined {
  const found = findFastener(fastener);
  if (!found.ok) return undefined;
  const { thread, shank_m, isNeeded, clause } = leadHole(found.row, G);
  return {
    thread: drillFor(thread.from_m, thread.to_m, units).words,
    shank: shank_m > 0 ? drillFor(shank_m, shank_m, units).words : '',
    isNeeded,
    clause,
  };
}
