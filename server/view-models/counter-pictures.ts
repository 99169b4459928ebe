import type { CounterOverhangDocument } from '../../shared/check-document/index.ts';
import type { CounterOverhangResult, TopField } from '../../shared/check-result.ts';
import { calculationUnits, type UnitSystem } from '../../shared/quantity/index.ts';
import { contourPicture, counterSection, plan, underCounter, type Bands } from '../drawings/index.ts';
import type { DrawingView, Pictures } from './drawing-views.ts';

/** The drawings of a counter overhang: plan, bands of movement and of stress across the grain, and section. */
export function counterPictures(document: CounterOverhangDocument, result: CounterOverhangResult): Pictures {
  const under = underCounter(document);
  return {
    whole: [
      {
        wide: plan(document, result, 'wide'),
        narrow: plan(document, result, 'narrow'),
        isAcross: false,
        isHalf: true,
      },
    ],
    diagrams: bandsOf(document, result).map((each): DrawingView => ({
      wide: contourPicture({ ...document, under }, each, 'wide'),
      narrow: contourPicture({ ...document, under }, each, 'narrow'),
      isAcross: false,
      isHalf: true,
    })),
    section: [counterSection(document)],
    detail: [],
  };
}

/** Movement and stress as bands, in the units of a calculation. */
function bandsOf(
  { units = 'inch-pound' }: CounterOverhangDocument,
  { analysis }: CounterOverhangResult,
): Bands[] {
  const { movement, acrossGrain } = analysis.plate.fields;
  return [
    ...bands('movement', 'Movement down', movement, units),
    ...bands('across-grain', 'Stress across the grain', acrossGrain, units),
  ];
}

/** A field as bands, in the unit of a calculation; none where there is no field. */
export function bands(kind: string, title: string, field: TopField | null, units: UnitSystem): Bands[] {
  if (field === null) return [];
  const { unit, size } = calculationUnits[units][field.unit];
  return [
    {
      kind,
      title,
      people: field.people,
      unit,
      field: { ...field, values: field.values.map((value) => value / size) },
    },
  ];
}
