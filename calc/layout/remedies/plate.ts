import { show } from '../../../shared/quantity/index.ts';
import { metresOf, plateThicknesses } from '../stock-sizes.ts';
import { effortOf, type Family, type Trouble } from './change.ts';

/** Brackets with plates of the next thicknesses that are sold. */
export function thickerPlate({ input, shelf }: Trouble): Family {
  const { system, document } = shelf;
  const present_m = document.brackets.plate?.thickness;
  const given = input.brackets.plate;
  if (present_m === undefined || given === undefined) return { touches: 'wall', changes: [] };
  const thicker = plateThicknesses[system].filter((text) => metresOf(text) > present_m + 1e-6);
  return {
    touches: 'wall',
    changes: thicker.map((thickness) => ({
      kind: 'thicker-plate' as const,
      what: `Plates ${show(metresOf(thickness), 'm', system)} thick on the wall instead of ${show(present_m, 'm', system)}.`,
      effort: effortOf['thicker-plate'],
      input: { ...input, brackets: { ...input.brackets, plate: { ...given, thickness } } },
    })),
  };
}
