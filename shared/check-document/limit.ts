import { z } from 'zod';
import { parseQuantity } from '../quantity/index.ts';

/** How far a bay may move: a fraction of its span, an amount in metres, or no limit. */
export type Limit =
  | { readonly kind: 'fraction'; readonly divisor: number; readonly written: string }
  | { readonly kind: 'amount'; readonly amount_m: number; readonly written: string }
  | { readonly kind: 'none'; readonly written: string };

const advice =
  'It takes a span fraction such as "L/360" (or 360 alone), an amount such as "1/4 in" or "6 mm", or "none".';

/** Reads a limit; undefined where the text is none. A bare number of 100 or more is what a span is divided by, as people say it. */
export function parseLimit(text: string): Limit | undefined {
  const written = text.trim();
  if (written.length > 40) return undefined;
  if (written.toLowerCase() === 'none') return { kind: 'none', written: 'none' };
  const divisor = Number(/^(?:[lL] ?\/ ?(\d{2,4})|([1-9]\d{2,3}))$/.exec(written)?.slice(1).join(''));
  if (divisor >= 50 && divisor <= 5000) return { kind: 'fraction', divisor, written: `L/${divisor}` };
  const amount = parseQuantity(written, 'length');
  if (amount.ok && amount.value > 0 && amount.value <= 0.1)
    return { kind: 'amount', amount_m: amount.value, written };
  return undefined;
}

/** The limit of one movement, as text in the document. */
export const limitField = z
  .string({ error: advice })
  .transform((text, context): Limit => {
    const limit = parseLimit(text);
    if (limit === undefined) {
      context.addIssue({ code: 'custom', message: `"${text.slice(0, 40)}" is not a limit. ${advice}` });
      return z.NEVER;
    }
    return limit;
  })
  .meta({ description: 'Span fraction, amount, or none' });
