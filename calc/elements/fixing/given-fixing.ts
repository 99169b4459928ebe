import type { Statement } from '../../../shared/check-result.ts';
import type { WallFixingDocument } from '../../../shared/check-document/index.ts';
import { show, type UnitSystem } from '../../../shared/quantity/index.ts';
import {
  findCombination,
  findFastener,
  findFramingWood,
  findMetal,
  findPanel,
  findSpecies,
} from '../../catalogue/index.ts';

type Given = Partial<Pick<WallFixingDocument, 'plate' | 'screws' | 'wall'>>;
type Framing = NonNullable<NonNullable<Given['wall']>['framing']>;

const framingWords: Readonly<Record<Framing, string>> = {
  'wood-stud': 'wood studs',
  blocking: 'wood blocking',
  sheathing: 'wood sheathing',
  'metal-stud': 'metal studs',
  masonry: 'masonry',
  concrete: 'concrete',
  hollow: 'hollow wall, no framing behind',
};

/** What the document says of plate, screws and wall. */
export function fixingStatements({ plate, screws, wall }: Given, system: UnitSystem): Statement[] {
  return [
    ...(plate === undefined ? [] : [plateStatement(plate, system)]),
    ...(screws === undefined ? [] : screwStatements(screws, system)),
    ...(wall === undefined ? [] : [wallStatement(wall, system)]),
  ];
}

function given(label: string, value: string): Statement {
  return { label, value, source: 'given' };
}

function plateStatement(plate: NonNullable<Given['plate']>, system: UnitSystem): Statement {
  const size = [plate.height, plate.width, ...(plate.thickness === undefined ? [] : [plate.thickness])];
  const names = `height × width${plate.thickness === undefined ? '' : ' × thickness'}`;
  const found = plate.metal === undefined ? undefined : findMetal(plate.metal);
  const metal = found === undefined ? '' : `, ${found.ok ? found.row.name : (plate.metal ?? '')}`;
  const sizes = size.map((each) => show(each, 'm', system)).join(' × ');
  return given(`Plate on the wall, ${names}`, `${sizes}${metal}`);
}

function screwStatements(screws: NonNullable<Given['screws']>, system: UnitSystem): Statement[] {
  const m = (metres: number): string => show(metres, 'm', system);
  const { fastener, length, heights, perHeight = 1, driven, allowable } = screws;
  const found = findFastener(fastener);
  const name = found.ok ? found.row.name : fastener === 'listed' ? 'Listed screw or anchor' : fastener;
  const many = perHeight === 1 ? '' : `, ${perHeight} side by side`;
  const toed = driven === 'toe' ? ', toed in' : '';
  const value = `${name}, ${m(length)} long${toed}, at ${heights.map(m).join(', ')} above the lower end of the plate${many}`;
  if (allowable === undefined) return [given('Screws into the wall', value)];
  const loads = `pull ${show(allowable.tension, 'N', system)}, shear ${show(allowable.shear, 'N', system)}`;
  return [
    given('Screws into the wall', value),
    { label: 'Allowable load of one screw', value: loads, source: allowable.report },
  ];
}

function wallStatement(wall: NonNullable<Given['wall']>, system: UnitSystem): Statement {
  const words = [
    wall.framing === undefined ? undefined : framingWords[wall.framing],
    wall.species === undefined ? undefined : woodName(wall.species),
    wall.framing === 'blocking' && wall.blockingHeight !== undefined
      ? `${show(wall.blockingHeight, 'm', system)} high`
      : undefined,
    wall.grain === 'end' ? 'into the end of the wood' : undefined,
    ...(wall.coverings ?? []).map(
      ({ material, thickness }) => `${show(thickness, 'm', system)} ${material.replaceAll('-', ' ')}`,
    ),
  ];
  return given('Wall', words.filter((word) => word !== undefined).join(', ') || 'not described');
}

/** A framing wood or panel as its table calls it, or as it was written. */
function woodName(written: string): string {
  for (const found of [findFramingWood(written), findCombination(written), findSpecies(written)]) {
    if (found.ok) return found.row.name;
  }
  const panel = findPanel(written, 0.012);
  if (panel.ok) return panel.row.name;
  return panel.reason === 'no-such-thickness' ? panel.name : written;
}
