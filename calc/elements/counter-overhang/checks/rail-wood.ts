import type { Material } from '../../../codes/design-code.ts';
import type { Overhang } from '../overhang.ts';

/** The wood of the rails; null where neither their height nor their wood is given, or it cannot be worked out. */
export function railWood({ document, base, code, system }: Overhang): Material | null {
  const { rail } = document.base;
  if (rail?.height === undefined && rail?.material === undefined) return null;
  const reading = code.material({
    path: '/base/rail',
    material: rail.material,
    basis: 'clear-wood',
    appearance: 'small-knots',
    grade: undefined,
    thickness_m: base.railThickness_m,
    width_m: rail.height ?? base.railThickness_m,
    use: 'edge',
    moisture: document.conditions?.moisture ?? 'dry',
    temperature: document.conditions?.temperature ?? 'ordinary',
    system,
  });
  return reading.ok ? reading.material : null;
}
