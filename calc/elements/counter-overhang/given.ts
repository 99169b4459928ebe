import type { Statement } from '../../../shared/check-result.ts';
import { show } from '../../../shared/quantity/index.ts';
import { barMetal } from './bar.ts';
import type { Overhang, Prop } from './overhang.ts';

/** What the document says, and what was filled in for it. */
export function givenStatements(overhang: Overhang): Statement[] {
  const { document, system, top, base, screws, props, limits } = overhang;
  const m = (metres: number): string => show(metres, 'm', system);
  const either = (label: string, value: string, isGiven: boolean): Statement => ({
    label,
    value,
    source: isGiven ? 'given' : 'assumed',
  });
  const given = (label: string, value: string): Statement => either(label, value, true);
  const { base: said } = document;
  return [
    given(
      'Top, length × depth × thickness',
      `${m(top.length_m)} × ${m(top.depth_m)} × ${m(top.thickness_m)}`,
    ),
    ...(top.finish?.statements ?? []),
    either(
      top.wood.isPanel ? 'Face grain runs' : 'Staves run',
      top.isAlong ? 'along the stool edge' : 'from back to stool edge',
      document.top.staves !== undefined,
    ),
    either('Own weight of the top', show(top.weight_N, 'N', system), false),
    given('Base, from the left end of the top', `${m(base.from_m)} to ${m(base.to_m)}`),
    given('Base, from the back edge of the top', `${m(base.back_m)} to ${m(base.front_m)}`),
    given('Overhang on the stool side', m(top.depth_m - base.front_m)),
    either('Upright panels at', base.panels_m.map(m).join(', ') || 'none', said.panels !== undefined),
    either('Thickness of rails and panels', m(base.railThickness_m), said.rail !== undefined),
    either(
      'Weight of the empty base',
      base.weight_N === null ? 'not known' : show(base.weight_N, 'N', system),
      said.weight !== undefined,
    ),
    either('It acts, from the back edge of the top', m(base.weightAt_m), said.weightAt !== undefined),
    either('Outer foot, from the back edge of the top', m(base.foot_m), said.foot !== undefined),
    either('Height of the base', m(base.height_m), said.height !== undefined),
    either('Held to the floor', base.isHeld ? 'yes' : 'no', said.heldToFloor !== undefined),
    ...(base.anchorPull_N === null
      ? []
      : [
          given(
            'Fasteners into the floor, along the back and along the foot',
            `${show(base.anchorPull_N, 'N', system)}, ${show(base.anchorPullFront_N, 'N', system)}`,
          ),
        ]),
    either('Push at the top', show(base.push_N, 'N', system), said.push !== undefined),
    either('Screws into the top', screws === null ? 'none' : screws.words, document.screws !== undefined),
    ...props.map((prop, index) =>
      given(
        `Prop ${index + 1}`,
        propWords(prop, m, (newtons) => show(newtons, 'N', system)),
      ),
    ),
    either('Limit of movement under load', limits.live.written, document.limits?.live !== undefined),
    either(
      'Limit of movement over the years',
      limits.longTerm.written,
      document.limits?.longTerm !== undefined,
    ),
    either('Moisture', document.conditions?.moisture ?? 'dry', document.conditions?.moisture !== undefined),
    given('Code of practice', overhang.code.edition),
  ];
}

function propWords(prop: Prop, m: (metres: number) => string, force: (newtons: number) => string): string {
  const at = `${m(prop.at)} along`;
  if (prop.kind === 'flat-bar') {
    return `flat bar ${m(prop.width)} × ${m(prop.thickness)}, ${barMetal(prop).name}, ${at}, from ${m(prop.from)} to ${m(prop.to)}`;
  }
  const rating =
    prop.allowable === undefined
      ? 'rating not known'
      : `rated for ${force(prop.allowable)}${prop.source === undefined ? '' : ` (${prop.source})`}`;
  return `${prop.kind}, ${at}, out to ${m(prop.to)}, ${rating}`;
}
