import { numberField, quantityField, textField, choiceField } from './field.ts';
import { durations } from './load.ts';

/** What every load on a counter may say. */
const common = {
  name: textField(80, 'What the load is').optional(),
  duration: choiceField(durations, 'How long the load lasts in all').optional(),
};

/** Fields of a load on each area of a counter. */
export const areaLoadFields = {
  ...common,
  amount: quantityField('area-load', { from: 0, to: 50_000 }, 'Load on each area of the counter'),
  sustained: numberField(0, 1, 'The share of the load that stays for years, and so creeps').optional(),
};

/**
 * Fields of somebody on a counter.
 *
 * @param weight what their weight is called
 */
export function personFields(weight: string) {
  return {
    ...common,
    amount: quantityField('force', { from: 0, to: 5_000 }, weight),
    patch: quantityField('length', { from: 0.02, to: 0.2 }, 'Side of the square that carries it').optional(),
  };
}
