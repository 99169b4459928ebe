import { check, DocumentError } from '../../calc/index.ts';
import type { JsonReading } from '../../shared/check-document/index.ts';
import type { CheckResult, FieldError } from '../../shared/check-result.ts';

/** What came of one source. */
export type Judgement =
  | { readonly kind: 'result'; readonly result: CheckResult }
  | { readonly kind: 'bad-input'; readonly errors: readonly FieldError[] }
  | { readonly kind: 'fault'; readonly message: string };

/** Checks what was read. It does not throw. */
export function judge(reading: JsonReading): Judgement {
  if (!reading.ok) return { kind: 'bad-input', errors: [{ path: '', message: reading.message }] };
  try {
    return { kind: 'result', result: check(reading.value) };
  } catch (error) {
    if (error instanceof DocumentError) return { kind: 'bad-input', errors: error.errors };
    return { kind: 'fault', message: error instanceof Error ? error.message : String(error) };
  }
}
