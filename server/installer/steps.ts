import { listed } from '../../shared/words.ts';
import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import { dimensionText } from '../drawings/lettering.ts';
import type { ArmScrews, Job, WallScrews } from './job.ts';

type Framing = NonNullable<NonNullable<BracketShelfDocument['wall']>['framing']>;

const lookFor: Readonly<Record<Framing, string>> = {
  'wood-stud': 'Find the studs and probe them. ',
  blocking: 'Find the blocking and probe it. ',
  sheathing: 'Make sure what the wall is sheathed with. ',
  'metal-stud': 'Find the studs and both their edges. ',
  masonry: '',
  concrete: '',
  hollow: '',
};
const mostHeightsInWords = 4;

/** The order of work, a step a line, for a shelf that holds. */
export function workSteps(document: BracketShelfDocument, { wall, arms }: Job): string[] {
  const units = document.units ?? 'inch-pound';
  const length = (metres: number): string => dimensionText(metres, units);
  const places = document.brackets.positions.toSorted((a, b) => a - b);
  const { framing = 'wood-stud', bracketHeight } = document.wall ?? {};
  const above =
    bracketHeight === undefined ? '' : ` The check has them ${length(bracketHeight)} above the floor.`;
  const joints = (document.board.joints ?? []).map(length);
  return [
    `${lookFor[framing]}Find wires and pipes before drilling.`,
    `Draw a level line for the plates’ lower ends.${above}`,
    `Mark the brackets on it${wall === undefined ? '' : `, the holes ${heightWords(wall, length)}`}.`,
    ...(wall === undefined ? [] : [drillWords(wall, length), fastenWords(wall, length)]),
    joints.length === 0
      ? `Lay the board, its left end ${length(places[0] ?? 0)} left of bracket 1.`
      : `Lay the boards, the left end ${length(places[0] ?? 0)} left of bracket 1, meeting at ${listed(joints)}.`,
    ...(arms === undefined ? [] : [armWords(arms, length)]),
    'Stick the label behind the shelf.',
  ];
}

type Length = (metres: number) => string;

function heightWords({ heights_m }: WallScrews, length: Length): string {
  return heights_m.length <= mostHeightsInWords ? `${listed(heights_m.map(length))} up` : 'as drawn';
}

function drillWords({ bore, depth_m, shankDepth_m }: WallScrews, length: Length): string {
  if (bore === undefined) return 'Drill as the report of the screw or anchor says.';
  if (bore.shank === '')
    return `No holes are needed. Where the wood would split, drill ${bore.thread} at most.`;
  const wider = shankDepth_m > 0 ? `, the first ${length(shankDepth_m)} at ${bore.shank}` : '';
  const advised = bore.isNeeded ? '' : ', advised';
  return `Drill ${bore.thread}, ${length(depth_m)} deep from the wall’s face${wider} (${bore.clause}${advised}).`;
}

function fastenWords({ name, each, count, length_m, bore }: WallScrews, length: Length): string {
  const doing = bore?.shank === '' ? 'Nail' : 'Screw';
  const turned = bore?.clause === 'NDS 12.1.4' ? ' Turn them in, never hammer.' : '';
  return `${doing} each bracket on: ${each} × ${name}, ${length(length_m)}; ${count} in all.${turned}`;
}

function armWords(
  { name, each, count, length_m, bore, depth_m, needsSlots }: ArmScrews,
  length: Length,
): string {
  const hole = bore === undefined ? '' : ` Drill ${bore.thread}, ${length(depth_m)} deep at most.`;
  const slots = needsSlots ? ' Slot all but the rear hole in each arm, front to back: wood moves.' : '';
  return `Screw up into it from each arm: ${each} × ${name}, ${length(length_m)}; ${count} in all.${hole}${slots}`;
}
