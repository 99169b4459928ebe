import type { FieldError } from '../check-result.ts';
import { unitAdvice, unitAdviceMetric, type Kind } from '../quantity/index.ts';

const kinds = Object.keys(unitAdvice).filter((kind): kind is Kind => Object.hasOwn(unitAdvice, kind));
/** Both ends of a range in inches and pounds, then in metric units. */
const range = /\b(from|more than) ([^():]+ to [^():]+) \(([^()]+ to [^()]+)\)\.$/;

/** The errors of a document in metric units: what a field takes is said in its own units first. */
export function metricFirst(errors: readonly FieldError[]): FieldError[] {
  return errors.map(({ path, message }) => ({
    path,
    message: kinds
      .reduce((words, kind) => words.replace(unitAdvice[kind], unitAdviceMetric[kind]), message)
      .replace(range, '$1 $3 ($2).'),
  }));
}
