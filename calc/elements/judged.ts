import type { Check, Step } from '../../shared/check-result.ts';

/** A check and the lines of working behind it. */
export interface Judged {
  readonly check: Check;
  readonly steps: readonly Step[];
}
