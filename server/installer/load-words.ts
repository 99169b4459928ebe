import { upperFirst } from '../../shared/words.ts';
import { actionsOf } from '../../calc/elements/bracket-shelf/actions.ts';
import { contentsOf } from '../../calc/elements/bracket-shelf/contents.ts';
import type { Action } from '../../calc/elements/bracket-shelf/shelf.ts';
import type { BracketShelfDocument, Duration } from '../../shared/check-document/index.ts';
import { dimensionText } from '../drawings/lettering.ts';
import { depths } from '../drawings/profile.ts';
import { lineWords, weightWords } from './plain-weights.ts';
import { stretchesOf, type Stretch } from './stretches.ts';

/** What may stand on a shelf, in plain words: never more than was checked. */
export interface LoadWords {
  readonly sentences: readonly string[];
  /** The limit along the board in a few words, for a label. */
  readonly label: string;
}

const mostPoints = 2;
const mostStretches = 2;

/** How long a load may stay, where that is not for good. */
const stays: Readonly<Record<Duration, string>> = {
  permanent: '',
  'ten-years': ', ten years at most',
  'two-months': ', two months at most',
  'seven-days': ', seven days at most',
  'ten-minutes': ', a few minutes at most',
  impact: ', for a moment',
};

/** The document's own loads as someone who fills the shelf reads them. */
export function loadWords(document: BracketShelfDocument): LoadWords {
  const units = document.units ?? 'inch-pound';
  const { front } = depths(document.board);
  const { contents } = contentsOf(document.loads ?? [], units);
  const { actions } = actionsOf(document, front, contents);
  const hand = [roamingSentence(document, actions)];
  // A load that was only checked in full must not be read as "no more than": less of it can ask more of the board.
  if (actions.some(({ load, free }) => load.kind !== 'roaming' && !free)) {
    return {
      sentences: [
        'Fill it exactly as the calculation sheet has it: some of it was checked as always there.',
        ...hand,
      ],
      label: 'Fill it exactly as the calculation sheet says',
    };
  }
  const lines = lineSentences(document, actions);
  return {
    sentences: [...lines.sentences, ...pointSentences(document, actions), ...hand],
    label: lines.label,
  };
}

/**
 * Contents along the board. Loads of different durations or places across the board can't be added up in words: only those
 * that ask least of whoever fills the shelf are put into them, and the rest is left to the calculation sheet.
 */
function lineSentences(
  document: BracketShelfDocument,
  actions: readonly Action[],
): { readonly sentences: string[]; readonly label: string } {
  const units = document.units ?? 'inch-pound';
  const all = actions.filter(({ load }) => load.kind === 'line' && load.load_Npm > 0);
  const [first] = all;
  if (first === undefined) {
    return {
      sentences: ['Nothing was checked that lies along the board.'],
      label: 'Nothing but what was checked',
    };
  }
  const alike = all.filter((each) => groupOf(each) === groupOf(first));
  const stretches = stretchesOf(alike, document.board.length);
  const more = alike.length < all.length ? ['More than this only as the calculation sheet has it.'] : [];
  const how = `${placeWords(first, document)}${stays[first.duration]}`;
  const least = Math.min(...stretches.map(({ load_Npm }) => load_Npm));
  const everywhere = lineWords(least, units);
  const label =
    everywhere === '' ? 'Fill it only as the calculation sheet says' : `No more than ${everywhere}${how}`;
  if (stretches.length === 1)
    return { sentences: [`${upperFirst(limit(everywhere))}${how}.`, ...more], label };
  if (stretches.length <= mostStretches) {
    const parts = stretches.map((each) => stretchWords(each, document)).join('; ');
    return { sentences: [`${upperFirst(parts)}${how}.`, ...more], label };
  }
  return {
    sentences: [
      `${upperFirst(limit(everywhere))}${how}.`,
      'More than this only as the calculation sheet has it.',
    ],
    label,
  };
}

const limit = (words: string): string => (words === '' ? 'nothing' : `no more than ${words}`);

function groupOf({ duration, eccentricity_m, spread }: Action): string {
  return `${duration} ${spread ? 'spread' : eccentricity_m.toFixed(6)}`;
}

function stretchWords(
  { from_m, to_m, load_Npm }: Stretch,
  { units = 'inch-pound' }: BracketShelfDocument,
): string {
  const amount = limit(lineWords(load_Npm, units));
  return `${amount} from ${dimensionText(from_m, units)} to ${dimensionText(to_m, units)}`;
}

function placeWords(
  { spread, eccentricity_m }: Action,
  { units = 'inch-pound' }: BracketShelfDocument,
): string {
  return spread
    ? ', spread front to back'
    : `, standing no more than ${dimensionText(eccentricity_m, units)} from the wall`;
}

function pointSentences(document: BracketShelfDocument, actions: readonly Action[]): string[] {
  const units = document.units ?? 'inch-pound';
  const sentences = actions.flatMap((action) => {
    const { load, name, duration, spread, eccentricity_m } = action;
    const amount = load.kind === 'point' ? weightWords(load.load_N, units) : '';
    if (load.kind !== 'point' || amount === '') return [];
    const at = dimensionText(load.at_m, units);
    const where = spread ? '' : `, ${dimensionText(eccentricity_m, units)} from the wall at most`;
    const called = name.length > 24 ? 'one thing' : name;
    return [`At ${at} from the left: ${called}, ${amount}${where}${stays[duration]}.`];
  });
  if (sentences.length <= mostPoints) return sentences;
  return ['Heavy single things only where the calculation sheet has them.'];
}

/** The heaviest hand that may stay for days in all; where only shorter ones were checked, the heaviest of those and how long. */
function roamingSentence(document: BracketShelfDocument, actions: readonly Action[]): string {
  const units = document.units ?? 'inch-pound';
  const hands = actions.flatMap(({ load, duration }) =>
    load.kind === 'roaming'
      ? [{ load_N: load.load_N, isShort: duration === 'ten-minutes' || duration === 'impact', duration }]
      : [],
  );
  const lasting = hands.filter(({ isShort }) => !isShort);
  const [heaviest] = (lasting.length > 0 ? lasting : hands).toSorted((a, b) => b.load_N - a.load_N);
  const amount = heaviest === undefined ? '' : weightWords(heaviest.load_N, units);
  if (heaviest === undefined || amount === '')
    return 'Nobody leans on the front edge, and nothing is hung from it.';
  const howLong = heaviest.isShort ? stays[heaviest.duration] : ', now and then';
  return `One hand may press on the front edge with ${amount} at most${howLong}; nothing is hung from it.`;
}
