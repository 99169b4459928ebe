import type {
  BracketShelfInput,
  CounterOverhangInput,
  CounterRunInput,
} from '../../../shared/check-document/index.ts';
import type { Element } from '../../form/index.ts';

/** What can be checked. */
export const elementWords: Words<Element> = {
  'bracket-shelf': 'A shelf on brackets',
  'counter-overhang': 'A counter that runs past its base',
  'counter-run': 'Panels under tile or stone',
  'wall-fixing': 'A fixing on its own',
};

type Board = BracketShelfInput['board'];
type Wall = NonNullable<BracketShelfInput['wall']>;
type Load = NonNullable<BracketShelfInput['loads']>[number];
type Words<T extends string | undefined> = Readonly<Record<NonNullable<T>, string>>;

/** How the choices of a document are said to a person. A word of the document without one does not compile. */
export const basisWords: Words<Board['basis']> = {
  'clear-wood': 'Tests of clear wood (ungraded)',
  graded: 'The grade stamped on it',
  panel: 'A panel standard',
};
export const appearanceWords: Words<Board['appearance']> = {
  'nearly-clear': 'Nearly clear',
  'small-knots': 'Small sound knots',
  knotty: 'Knotty',
};
export const flushWords: Words<NonNullable<Board['nosing']>['flush']> = {
  top: 'Flush with the top',
  bottom: 'Flush with the underside',
};
export const bondWords: Words<Board['bond']> = {
  none: 'Not glued, or not to be relied on',
  structural: 'Glued to act as one',
};
export const holdWords: Words<BracketShelfInput['brackets']['hold']> = {
  screwed: 'Screwed to its brackets',
  resting: 'Resting on its brackets',
};
export const capacityWords: Words<NonNullable<BracketShelfInput['brackets']['capacity']>['basis']> = {
  rated: 'The maker rates it',
  steel: 'Work it out: a steel bar',
  unknown: 'Not known',
};
export const framingWords: Words<Wall['framing']> = {
  'wood-stud': 'Wood studs',
  blocking: 'Wood blocking between studs',
  sheathing: 'Wood sheathing',
  'metal-stud': 'Metal studs',
  masonry: 'Masonry',
  concrete: 'Concrete',
  hollow: 'Hollow wall, no framing behind',
};
export const grainWords: Words<Wall['grain']> = {
  side: 'The side of the wood, across its fibres',
  end: 'The end of the wood, along its fibres',
};
export const drivenWords: Words<NonNullable<BracketShelfInput['brackets']['screws']>['driven']> = {
  straight: 'Straight',
  toe: 'Toed in, at a slant',
};
export const loadKindWords: Words<Load['kind']> = {
  line: 'Spread along a length',
  area: 'Spread over the top',
  point: 'At one place',
  roaming: 'Anywhere along the front edge',
};
export const stavesWords: Words<CounterOverhangInput['top']['staves']> = {
  along: 'Along the stool edge',
  across: 'From the back to the stool edge',
};
export const buildWords: Words<CounterOverhangInput['top']['build']> = {
  'edge-glued-staves': 'Staves glued edge to edge',
  'solid-plank': 'One solid plank',
  panel: 'A panel: plywood, MDF and the like',
};
export const finishWords: Words<NonNullable<CounterOverhangInput['top']['finish']>['kind']> = {
  'ceramic-tile': 'Ceramic tile',
  'natural-stone': 'Natural stone',
};
export const runGrainWords: Words<CounterRunInput['substrate']['grain']> = {
  along: 'Along the span',
  across: 'Across the span',
};
export const railWords: Words<CounterRunInput['rails']> = {
  none: 'None',
  front: 'In front',
  back: 'At the back',
  both: 'In front and at the back',
};
export const propWords: Words<NonNullable<CounterOverhangInput['props']>[number]['kind']> = {
  'flat-bar': 'A flat bar of steel',
  bracket: 'A bracket on the base',
  corbel: 'A corbel on the base',
  leg: 'A leg on the floor',
};
export const counterLoadWords: Words<NonNullable<CounterOverhangInput['loads']>[number]['kind']> = {
  area: 'Served, all over the top',
  person: 'A person at an edge',
};
export const durationWords: Words<Load['duration']> = {
  permanent: 'For good',
  'ten-years': 'For years (ten in all)',
  'two-months': 'For months (two in all)',
  'seven-days': 'For days (seven in all)',
  'ten-minutes': 'For minutes (ten in all)',
  impact: 'A blow',
};
export const arrangementWords: Words<Load['arrangement']> = {
  free: 'It comes and goes',
  fixed: 'Always there in full',
};
export const moistureWords: Words<NonNullable<BracketShelfInput['conditions']>['moisture']> = {
  dry: 'Dry (wood at 19 % or less)',
  wet: 'Wet',
};
export const temperatureWords: Words<NonNullable<BracketShelfInput['conditions']>['temperature']> = {
  ordinary: 'Ordinary (to 100 °F, 38 °C)',
  warm: 'Warm (to 125 °F, 52 °C)',
  hot: 'Hot (to 150 °F, 65 °C)',
};
export const codeWords: Words<BracketShelfInput['code']> = {
  'nds-asd': 'NDS, allowable stress design',
};
export const unitsWords: Words<BracketShelfInput['units']> = {
  'inch-pound': 'Inches and pounds',
  metric: 'Millimetres and newtons',
};

/** The words of a choice, or a given text where it is none of the choices. */
export function wordOf(words: Readonly<Record<string, string>>, choice: string, otherwise: string): string {
  return words[choice] ?? otherwise;
}
