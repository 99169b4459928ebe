import {
  findCombination,
  findPanel,
  findSpecies,
  gradedLumber,
  notSure,
  panels,
  rowOfCommonWord,
  searchBoards,
  type BoardMatch,
} from '../../../calc/catalogue/index.ts';
import { show, type UnitSystem } from '../../../shared/quantity/index.ts';
import type { FormView } from './form-view.ts';
import type { BoardFound, BoardPicker } from './model.ts';

/** Where a board of each kind takes its strength from, as the document says it. */
const basisOf: Readonly<Record<BoardMatch['kind'], string>> = {
  species: 'clear-wood',
  lumber: 'graded',
  panel: 'panel',
};
const kindWords: Readonly<Record<BoardMatch['kind'], string>> = {
  species: 'wood',
  lumber: 'graded lumber',
  panel: 'panel',
};

/** The boards that go by the name that was typed, with what is known of each and who says so. */
export function boardPicker(form: FormView): BoardPicker {
  const picker = boardsFound(form.written('board.material'), form.system);
  form.sayings.push({ id: 'said:boards', text: picker.sentence });
  return { ...picker, isOpen: form.hasError('board.material') };
}

/** The boards that go by a name. */
export function boardsFound(text: string, system: UnitSystem): BoardPicker {
  const found = searchBoards(text).map((board) => describe(board, system));
  const message =
    text === ''
      ? 'Not said: the weakest likely wood is taken. Some likely woods:'
      : rowOfCommonWord(text) === notSure()
        ? `“${text.slice(0, 80)}” names no wood. Some likely woods:`
        : found.length === 0
          ? `No board goes by “${text.slice(0, 80)}”.`
          : `Boards that go by “${text.slice(0, 80)}”:`;
  return { found, message, sentence: sentenceOf(text, found), isOpen: false };
}

/** The board of this name, if it is one that the catalogue knows by it. */
function sentenceOf(text: string, found: readonly BoardFound[]): string {
  const [first] = found;
  return text === '' || first === undefined || !isKnown(text)
    ? 'Density, stiffness, and who says so.'
    : `${first.facts}.`;
}

function isKnown(text: string): boolean {
  const panel = findPanel(text, 0);
  return findSpecies(text).ok || findCombination(text).ok || panel.ok || panel.reason !== 'unknown-name';
}

function describe(board: BoardMatch, system: UnitSystem): BoardFound {
  const { facts, source } = knowledge(board, system);
  return {
    doing: `board:${basisOf[board.kind]}=${board.name}`,
    name: `${board.name}, ${kindWords[board.kind]}`,
    facts,
    source,
  };
}

function knowledge(board: BoardMatch, system: UnitSystem): { facts: string; source: string } {
  if (board.kind === 'species') {
    const found = findSpecies(board.id);
    if (!found.ok) return { facts: '', source: '' };
    const { dry, density_kgm3, source, provenance, drawn } = found.row;
    const whose = drawn === null ? provenance : 'each from its own row';
    return facts([density_kgm3], [dry.modulusOfElasticity_Pa], source, whose, system);
  }
  const rows =
    board.kind === 'panel'
      ? panels
          .filter(({ id, name }) => id === board.id || name === board.name)
          .map((row) => ({ ...row, stiffness: row.along.modulusOfElasticity_Pa }))
      : gradedLumber
          .filter(({ combination }) => combination === board.id || combination === board.name)
          .map((row) => ({ ...row, stiffness: row.modulusOfElasticity_Pa }));
  const [first] = rows;
  if (first === undefined) return { facts: '', source: '' };
  const densities = rows.map((row) => row.density_kgm3);
  const stiffnesses = rows.map((row) => row.stiffness);
  return facts(densities, stiffnesses, first.source, first.provenance, system);
}

function facts(
  densities: readonly number[],
  stiffnesses: readonly number[],
  source: string,
  provenance: string,
  system: UnitSystem,
): { facts: string; source: string } {
  const density = range(densities, (value) => show(value, 'kg/m3', system));
  const stiffness = range(stiffnesses, (value) => inThousands(show(value, 'Pa', system)));
  return { facts: `${density}; stiffness ${stiffness}`, source: `${source} (${provenance})` };
}

/** `1830000 psi` as people write it: `1,830,000 psi`. */
function inThousands(words: string): string {
  return words.replace(/\d{5,}/, (digits) => digits.replace(/\B(?=(?:\d{3})+$)/g, ','));
}

function range(values: readonly number[], write: (value: number) => string): string {
  const [low, high] = [write(Math.min(...values)), write(Math.max(...values))];
  return low === high ? low : `${low} to ${high}`;
}
