import { wetFasteners } from '../../standards/nds-2018/11.3-connections.ts';
import type { CounterOverhangDocument, Duration } from '../../../shared/check-document/index.ts';
import type { Step } from '../../../shared/check-result.ts';
import { show, type UnitSystem } from '../../../shared/quantity/index.ts';
import { findFastener, type Fastener } from '../../catalogue/index.ts';
import { work } from '../../formula/step.ts';
import { durationFactor, temperatureFactor } from '../../standards/nds-2018/2.3-adjustment.ts';
import {
  adjustedWithdrawal,
  headPullThrough,
  lagConstant,
  lagWithdrawal,
  nailConstant_Pa,
  nailWithdrawal,
  pullThroughConstant_Pa,
  woodScrewConstant_Pa,
  woodScrewWithdrawal,
} from '../../standards/nds-2018/12.2-withdrawal.ts';
import { usualThread_m } from '../fixing/values.ts';
import { usual } from './usual.ts';
import { woodGravity } from '../bracket-shelf/board-screws.ts';

const usualFastener = 'wood-screw-8';
/** Framing whose wood is not known. */
const usualGravity = 0.36;
/** 25 N/mm³ × diameter × thread: stiffness of a screw in withdrawal, as approvals of screws give it. From memory. */
const slipModulus_Npm3 = 25e9;

/** The screws up through the base into the top. */
export interface TopScrews {
  readonly fastener: Fastener;
  readonly length_m: number;
  readonly through_m: number;
  readonly thread_m: number;
  readonly places: readonly { readonly x_m: number; readonly y_m: number }[];
  /** How far a screw gives under one newton. */
  readonly give_mpN: number;
  /** What one screw holds in a combination whose shortest load lasts so long. */
  pullUnder(duration: Duration): ScrewPull;
  readonly words: string;
  readonly assumptions: readonly string[];
}

/** Allowable pull of one screw, the lesser of the thread in the top and the head in the rail. */
export interface ScrewPull {
  readonly pull_N: number;
  readonly governs: 'thread in the top' | 'head in the rail';
  readonly steps: readonly Step[];
}

/**
 * The screws with every default filled in, and what one of them holds.
 *
 * @param gravity specific gravity of the top; null where none is printed, and then nothing is known of the screws
 */
export function readTopScrews(
  { screws, top, conditions }: CounterOverhangDocument,
  gravity: number | null,
  system: UnitSystem,
): TopScrews | null {
  const found = findFastener(screws?.fastener ?? usualFastener);
  if (screws === undefined || !found.ok || gravity === null) return null;
  const fastener = found.row;
  const through_m = screws.through ?? Math.min(usual.railThickness_m, screws.length / 2);
  const inTop_m = Math.min(screws.length - through_m, top.thickness);
  const tip_m = fastener.kind === 'lag-screw' ? (fastener.tip_m ?? 0) : 0;
  const thread_m = Math.max(0, Math.min(usualThread_m(fastener, screws.length), inTop_m - tip_m));
  const moisture = conditions?.moisture ?? 'dry';
  const factors = {
    C_M:
      moisture === 'wet'
        ? fastener.kind === 'common-nail'
          ? wetFasteners.nailWithdrawal
          : wetFasteners.screwWithdrawal
        : 1,
    C_t: temperatureFactor[moisture][conditions?.temperature ?? 'ordinary'],
  };
  const D = fastener.diameter_m;
  const W = {
    'wood-screw': () => work(woodScrewWithdrawal, { k_W: woodScrewConstant_Pa, G: gravity, D }, system),
    'lag-screw': () => work(lagWithdrawal, { k_W: lagConstant, G: gravity, D }, system),
    'common-nail': () => work(nailWithdrawal, { k_W: nailConstant_Pa, G: gravity, D }, system),
  }[fastener.kind]();
  const G = (screws.cleat === undefined ? null : woodGravity(screws.cleat)) ?? usualGravity;
  const D_H = fastener.headDiameter_m ?? 2 * D;
  const pullUnder = (duration: Duration): ScrewPull => {
    const all = { ...factors, C_D: Math.min(durationFactor[duration], 1.6) };
    const inTop = work(adjustedWithdrawal, { W: W.value, p_t: thread_m, ...all, C_eg: 1, C_tn: 1 }, system);
    const head = work(
      headPullThrough,
      { k_H: pullThroughConstant_Pa, D_H, G, t_ns: through_m, ...all },
      system,
    );
    return {
      pull_N: Math.min(inTop.value, head.value),
      governs: inTop.value <= head.value ? 'thread in the top' : 'head in the rail',
      steps: [W.step, inTop.step, head.step],
    };
  };
  const said = (isGiven: boolean, words: string): string[] => (isGiven ? [] : [words]);
  return {
    fastener,
    length_m: screws.length,
    through_m,
    thread_m,
    places: screws.at.map(([x_m, y_m]) => ({ x_m, y_m })),
    give_mpN: 1 / Math.max(slipModulus_Npm3 * D * thread_m, 1),
    pullUnder,
    words: `${screws.at.length} × ${fastener.name}, ${show(screws.length, 'm', system)} long, through ${show(through_m, 'm', system)}`,
    assumptions: [
      ...said(screws.fastener !== undefined, `Screws into the top not named: ${fastener.name} taken.`),
      ...said(
        screws.through !== undefined,
        `The screws go through ${show(through_m, 'm', system)} of rail or cleat.`,
      ),
      ...said(
        screws.cleat !== undefined,
        `The wood of the rail or cleat is not named: specific gravity ${usualGravity}.`,
      ),
      'A screw gives by 1 / (25 d l) mm for each newton, d and l in mm, as approvals of wood screws have it (memory); screws are also taken as loose, and the worse counts.',
      ...said(fastener.kind !== 'common-nail', 'Nails: smooth shank, into side grain.'),
    ],
  };
}
