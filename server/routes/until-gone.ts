import type { Response } from 'express';

/** Tells when whoever asked has gone before the answer came, so that no more work is done for them. */
export function untilGone(response: Response): AbortSignal {
  const gone = new AbortController();
  response.once('close', () => gone.abort());
  return gone.signal;
}
