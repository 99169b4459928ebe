import { wallFixingPaths, type SoundWallFixing } from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import { fixingNames } from '../fixing/names.ts';

/** Names of a wall fixing that no table of the catalogue has. */
export function unknownNamesOfWallFixing(sound: SoundWallFixing): FieldError[] {
  return fixingNames(sound, wallFixingPaths);
}
