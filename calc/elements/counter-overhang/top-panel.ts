import type { CounterOverhangDocument } from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import type { UnitSystem } from '../../../shared/quantity/index.ts';
import type { DesignCode, Material, MaterialRequest } from '../../codes/design-code.ts';
import { panelRatios, plateOf, type GrainStiffness } from '../grain-plate.ts';
import type { TopWood } from './top-wood.ts';

/** What a top of nobody knows which panel is taken for: the weakest of common ones. */
const usualPanel = 'particleboard';

/** What is said of a top made of panels. */
export interface PanelTop {
  readonly top: Pick<
    CounterOverhangDocument['top'],
    'material' | 'thickness' | 'sheets' | 'bond' | 'depth' | 'length'
  >;
  readonly conditions?: CounterOverhangDocument['conditions'];
  /** Where the document has it. */
  readonly path?: string;
}

/** Looks the panel of a top up and makes a plate of it: one thickness, or sheets that slide on each other. */
export function readTopPanel(
  { top, conditions, path = '/top' }: PanelTop,
  code: DesignCode,
  system: UnitSystem,
):
  | { readonly ok: true; readonly wood: TopWood }
  | { readonly ok: false; readonly errors: readonly FieldError[] } {
  const count = top.sheets ?? 1;
  const sheet_m = top.thickness / count;
  const name = top.material ?? usualPanel;
  const request: MaterialRequest = {
    path,
    material: name,
    basis: 'panel',
    appearance: undefined,
    grade: undefined,
    thickness_m: sheet_m,
    width_m: Math.min(top.depth, top.length),
    use: 'flat',
    moisture: conditions?.moisture ?? 'dry',
    temperature: conditions?.temperature ?? 'ordinary',
    system,
  };
  const reading = code.material(request);
  if (!reading.ok) return reading;
  const across = panelRatios(name, sheet_m, reading.material.E_Pa);
  const softwood =
    across.row?.family === 'plywood' && across.row.shear_Pa === null
      ? code.material({ ...request, material: 'plywood' })
      : null;
  const material =
    softwood?.ok === true ? withShearOf(reading.material, softwood.material) : reading.material;
  const slides = count > 1 && top.bond !== 'structural';
  const { ratio, poisson } = across;
  const plate = plateOf(material, slides ? sheet_m : top.thickness, ratio, poisson, system, null);
  const stiffness = slides ? times(plate.stiffness, count) : plate.stiffness;
  return {
    ok: true,
    wood: {
      material,
      isPanel: true,
      sheets: slides ? count : 1,
      soft: stiffness,
      stiff: stiffness,
      softAcross_Pa: plate.across_Pa,
      shear: null,
      movement: 0,
      steps: plate.steps,
      provenance: material.provenance,
      assumptions: [
        ...material.assumptions.map((each) =>
          each
            .replace(' along the shelf.', ' as is said of the top.')
            .replaceAll('along the shelf', 'along the panel'),
        ),
        ...(top.material === undefined
          ? ['Nothing is said of the panel: particleboard of the furniture grade is taken.']
          : []),
        ...(softwood?.ok === true
          ? [
              'Nothing is printed for shear in the plane of this plywood or for pressure on its face: what softwood plywood bears, which is weaker (common practice, no source), stands in.',
            ]
          : []),
        ...across.assumptions,
        ...(count === 1
          ? []
          : [
              slides
                ? `${count} sheets of equal thickness slide on each other: together they are ${count} times as stiff as one.`
                : `${count} sheets of equal thickness are glued to act as one.`,
            ]),
      ],
    },
  };
}

function withShearOf(material: Material, standIn: Material): Material {
  return {
    ...material,
    resistance: (property, duration) =>
      (property === 'shear' || property === 'bearing' ? standIn : material).resistance(property, duration),
  };
}

function times(one: GrainStiffness, count: number): GrainStiffness {
  return {
    along_Nm: count * one.along_Nm,
    across_Nm: count * one.across_Nm,
    coupling_Nm: count * one.coupling_Nm,
    twisting_Nm: count * one.twisting_Nm,
  };
}
