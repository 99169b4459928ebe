import type { FieldError } from '../check-result.ts';
import { reporter } from './conflict.ts';
import { fixingConflicts, wallFixingPaths } from './fixing-conflicts.ts';
import type { SoundWallFixing } from './sound.ts';

/**
 * What does not fit together between the fields of a wall fixing.
 *
 * @param document the sound parts of the document
 * @param faults the errors of single fields: what is missing because it is at fault is not called missing
 */
export function wallFixingConflicts(document: SoundWallFixing, faults: readonly FieldError[]): FieldError[] {
  const { errors, report } = reporter(faults, document.units);
  fixingConflicts(document, wallFixingPaths, report);
  const { wall, position, loads } = document;
  const framing = wall?.framing ?? 'wood-stud';
  const meetsStuds = framing === 'wood-stud' || framing === 'metal-stud';
  if (wall?.studs !== undefined && meetsStuds && position === undefined) {
    report(
      '/position',
      'It is missing. The places of studs are given: it takes the place of the plate among them.',
    );
  }
  loads?.forEach((load, index) => {
    if (load === undefined) return;
    const acts = [load.shear, load.pull, load.couple].some((each) => each !== undefined && each > 0);
    const path = `/loads/${index}`;
    if (!acts) {
      report(`${path}/shear`, 'It takes a shear, a pull or a couple.', `${path}/pull`, `${path}/couple`);
    }
  });
  return errors;
}
