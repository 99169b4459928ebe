import type { BracketShelfDocument } from '../../shared/check-document/index.ts';
import { dimensionText } from './lettering.ts';
import type { LoadLine } from './load-lines.ts';
import { depths } from './profile.ts';

/** The section in words. */
export function sectionWords(document: BracketShelfDocument, loads: readonly LoadLine[]): string {
  const units = document.units ?? 'inch-pound';
  const length = (metres: number): string => dimensionText(metres, units);
  const { board, brackets, wall } = document;
  const screws = brackets.screws;
  return [
    `The board is ${length(board.thickness)} thick and ${length(board.depth)} deep; its front edge is ${length(depths(board).front)} from the wall finish.`,
    `The bracket's arm reaches ${length(brackets.arm)}.`,
    brackets.plate === undefined ? '' : `Its plate is ${length(brackets.plate.height)} high.`,
    screws === undefined
      ? ''
      : `Screws ${length(screws.length)} long at ${screws.heights.map(length).join(' and ')} above the plate's lower end.`,
    brackets.boardScrews?.at === undefined
      ? ''
      : `Screws go up through the arm into the board at ${brackets.boardScrews.at.map(length).join(' and ')} from the wall.`,
    ...(wall?.coverings ?? []).map(
      ({ material, thickness }) =>
        `The wall is covered with ${length(thickness)} of ${material.replaceAll('-', ' ')}.`,
    ),
    loads.length === 0
      ? ''
      : `Loads press at these distances from the wall: ${loads.map(({ words }) => words).join('; ')}.`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}
