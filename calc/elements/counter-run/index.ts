import { cautions } from '../../../shared/cautions.ts';
import { DocumentError, type CounterRunDocument } from '../../../shared/check-document/index.ts';
import type { CounterRunResult, TopField } from '../../../shared/check-result.ts';
import { quantity } from '../../../shared/quantity/index.ts';
import {
  addedLoads,
  averagedMoment,
  estimatedError,
  momentsOf,
  nodeOf,
} from '../../mechanics/plate/index.ts';
import { plateBendingStress } from '../../mechanics/plate-formulas.ts';
import { version } from '../../version.ts';
import type { Judged } from '../judged.ts';
import { verdictOf } from '../verdict.ts';
import { verdictWords } from '../verdict-words.ts';
import { bowChecks } from './bow.ts';
import { movementChecks, pressureCheck, strengthChecks, tooSoftCheck, type Service } from './checks.ts';
import { railChecks } from './rail-checks.ts';
import { readRun, type Run } from './run.ts';
import { modelOf, mostOf, settled, statesOf, TooSoft, type Model, type Moving, type State } from './solve.ts';
import { worksheetOf } from './worksheet.ts';

/**
 * Checks panels that carry tile or stone over an opening, as a plate on the cabinet sides.
 *
 * @throws DocumentError where the panel is in no table or has no values at its thickness
 */
export function checkCounterRun(document: CounterRunDocument): CounterRunResult {
  const reading = readRun(document);
  if (!reading.ok) throw new DocumentError([...reading.errors]);
  const { run } = reading;
  const model = modelOf(run);
  const durations = [run.serving, run.person].flatMap((load) => (load === null ? [] : [load.duration]));
  const solved = unlessTooSoft(() => {
    const all = run.code.combinations(durations).flatMap((each) => statesOf(run, model, each));
    return { states: all, service: serviceOf(run, model, all, 'all') };
  });
  const judged =
    solved === null
      ? tooSoftCheck(run)
      : [
          ...strengthChecks(run, solved.states),
          ...pressureCheck(run, solved.states),
          ...movementsOf(run, model, solved),
          ...railChecks(run, solved.states),
          ...bowChecks(run, solved.service),
        ];
  const fields = fieldsOf(run, model, solved?.states ?? []);
  const checks = judged.map(({ check }) => check);
  const { verdict, governing } = verdictOf(checks);
  return Object.freeze({
    schema: 1,
    element: 'counter-run',
    verdict,
    summary: verdictWords(verdict, governing, checks),
    governing: governing.id,
    checks,
    analysis: { ...amountsOf(run, solved), fields },
    fixings: [],
    remedies: [],
    assumptions: [...new Set(run.assumptions)],
    warnings: run.warnings,
    cautions,
    worksheet: {
      sections: worksheetOf(
        run,
        solved?.states ?? [],
        solved?.service ?? null,
        judged,
        fields.movement?.meshError ?? null,
      ),
    },
    provenance: {
      values: [
        ...run.panel.provenance,
        ...(run.finish?.provenance ?? []),
        ...(run.rail?.material.provenance ?? []),
      ],
    },
    edition: { code: run.code.edition, tool: `Shelf and overhang check ${version}` },
  });
}

interface Solved {
  readonly states: readonly State[];
  /** Of everything: panels with the rails they lie on. */
  readonly service: Service;
}

/** Everything is held to the span; between two rails the panels are held to the way from one to the other as well. */
function movementsOf(run: Run, model: Model, { states, service }: Solved): Judged[] {
  const { span_m, depth_m, rails } = run;
  const all = movementChecks(run, service, { of: 'all', span_m });
  if (rails.length < 2) return all;
  const between = serviceOf(run, model, states, 'beyond-rails');
  return [...all, ...movementChecks(run, between, { of: 'beyond-rails', span_m: depth_m })];
}

function amountsOf(
  { creep, system }: Run,
  solved: Solved | null,
): Omit<CounterRunResult['analysis'], 'fields'> {
  if (solved === null) return { even: null, withPerson: null, longTerm: null };
  const { even_m, stays_m } = solved.service;
  const q = (value: number) => quantity(value, 'm', system);
  return {
    even: q(even_m),
    withPerson: q(Math.max(...solved.states.map(({ movement_m }) => movement_m))),
    longTerm: q(creep * stays_m + Math.max(0, even_m - stays_m)),
  };
}

function unlessTooSoft<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof TooSoft) return null;
    throw error;
  }
}

function serviceOf(run: Run, model: Model, states: readonly State[], of: Moving): Service {
  const even = model.serving === null ? model.dead : addedLoads(model.dead, model.serving);
  const stays =
    model.serving === null ? model.dead : addedLoads(model.dead, model.serving, run.serving?.sustained ?? 0);
  const peopled = states.filter(({ spot }) => spot !== null);
  const together = peopled
    .map(({ field, spot }) => ({
      moved_m: mostOf(model, of, field),
      where: `somebody standing ${spot?.words ?? ''}`,
    }))
    .reduce<Service['together']>((a, b) => (a === null || b.moved_m > a.moved_m ? b : a), null);
  const live = peopled
    .map((state) => {
      const alone = states.find(
        ({ combination, spot }) => combination === state.combination && spot === null,
      );
      const added_m = mostOf(model, of, state.field, alone?.field);
      return { added_m, where: `somebody standing ${state.spot?.words ?? ''}` };
    })
    .reduce<Service['live']>((a, b) => (a === null || b.added_m > a.added_m ? b : a), null);
  return {
    even_m: mostOf(model, of, settled(model, even).field),
    live,
    together,
    stays_m: mostOf(model, of, settled(model, stays).field),
  };
}

function fieldsOf(run: Run, model: Model, states: readonly State[]): CounterRunResult['analysis']['fields'] {
  const worst = (pick: (state: State) => number): State | undefined =>
    states.reduce<State | undefined>((a, b) => (a === undefined || pick(b) > pick(a) ? b : a), undefined);
  const way = run.isAlong ? 'y' : 'x';
  const [moved, strained] = [
    worst(({ movement_m }) => movement_m),
    worst((state) => (run.isAlong ? state.acrossSpan_N : state.alongSpan_N)),
  ];
  const field = (
    state: State | undefined,
    unit: TopField['unit'],
    values: (state: State) => number[],
  ): TopField | null =>
    state === undefined
      ? null
      : {
          ...{ x_m: [...model.mesh.x_m], y_m: [...model.mesh.y_m], unit, values: values(state) },
          people:
            state.spot === null
              ? []
              : [
                  {
                    x: quantity(state.spot.x_m, 'm', run.system),
                    y: quantity(state.spot.y_m, 'm', run.system),
                  },
                ],
          meshError: estimatedError(model.plate, state.field),
        };
  const { mesh } = model;
  const { sheets } = run.panel;
  const each = (value: (i: number, j: number) => number): number[] =>
    mesh.y_m.flatMap((_, j) => mesh.x_m.map((__, i) => value(i, j)));
  return {
    movement: field(moved, 'm', (state) => each((i, j) => state.field[4 * nodeOf(mesh, i, j)] ?? 0)),
    acrossGrain: field(strained, 'Pa', (state) => {
      const moments = momentsOf(model.plate, state.field);
      return each((i, j) =>
        plateBendingStress.evaluate({
          m: Math.abs(averagedMoment(moments, way, [i, j], run.thickness_m)) / sheets,
          t: run.thickness_m / sheets,
        }),
      );
    }),
  };
}
