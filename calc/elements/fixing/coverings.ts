import { inch } from '../../../shared/quantity/index.ts';
import type { BracketShelfDocument } from '../../../shared/check-document/index.ts';

type Wall = Pick<NonNullable<BracketShelfDocument['wall']>, 'coverings' | 'framing'>;
type Covering = NonNullable<Wall['coverings']>[number];

const gypsumBoard: Covering = { material: 'gypsum-board', thickness: inch / 2 };

/** What covers the wall where the plates stand, from the room inwards: gypsum board on a framed wall of which nobody says it. */
export function coveringsOf(wall: Wall): readonly Covering[] {
  return wall.coverings ?? (isFramed(wall.framing) ? [gypsumBoard] : []);
}

/** Whether a wall is a frame, which something covers as a rule. */
export function isFramed(framing: string | undefined): boolean {
  return framing !== 'masonry' && framing !== 'concrete';
}

/** Thickness of all that covers a wall, m. */
export function coveringThickness(wall: Wall): number {
  return coveringsOf(wall).reduce((sum, { thickness }) => sum + thickness, 0);
}
