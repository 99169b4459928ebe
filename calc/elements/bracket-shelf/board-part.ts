import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';
import type { Material } from '../../codes/design-code.ts';
import type { Part } from '../../mechanics/section.ts';

export type BoardInput = BracketShelfDocument['board'];

/** A part of the board and what it is made of. */
export interface BoardPart extends Part {
  readonly material: Material;
}
