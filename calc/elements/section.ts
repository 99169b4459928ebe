import type { Section, SectionId, Statement, Step, Table } from '../../shared/check-result.ts';
import type { Duration } from '../../shared/check-document/index.ts';
import type { DesignCode, Material } from '../codes/design-code.ts';
import type { Judged } from './judged.ts';

interface SectionParts {
  readonly statements?: readonly Statement[];
  readonly steps?: readonly Step[];
  readonly tables?: readonly Table[];
  readonly notes?: readonly string[];
  readonly check?: string;
}

/** A chapter of the calculation; what is not said of it is empty. */
export function section(id: SectionId, title: string, parts: SectionParts): Section {
  return { id, title, check: '', statements: [], steps: [], tables: [], notes: [], ...parts };
}

/** The combinations of a code of practice for loads of some durations, as they stand among the actions. */
export function combinationTable(code: DesignCode, durations: readonly Duration[]): Table {
  return {
    title: 'Combinations',
    head: ['Combination', 'Shortest load', 'Factor C_D'],
    rows: code
      .combinations(durations)
      .map(({ name, duration }) => [name, duration.replace('-', ' '), String(code.woodDuration(duration))]),
  };
}

/** How far what stays for years moves in the end, over its first movement. */
export function creepStatement({ creep }: Pick<Material, 'creep'>): Statement {
  return {
    label: 'Creep: final over first movement of what stays',
    value: String(creep.factor),
    source: creep.source,
  };
}

/** A chapter for each check. */
export function checkSections(judged: readonly Judged[]): Section[] {
  return judged.map(({ check, steps }) =>
    section('checks', check.title, {
      check: check.id,
      steps,
      notes: check.note === '' ? [] : [check.note],
    }),
  );
}
