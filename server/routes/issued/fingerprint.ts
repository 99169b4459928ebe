import { raw, Router, type Response } from 'express';
import { lookUpFile, lookUpFingerprint, type LookUp } from '../../issued/look-up.ts';
import { readFingerprint } from '../../issued/typed-fingerprint.ts';
import type { Store } from '../../store/open-store.ts';
import type { Templates } from '../../templates.ts';
import { fingerprintPage } from '../../view-models/issued/fingerprint-page.ts';
import { fileOf } from '../multipart.ts';
import { bytesOf } from '../page-body.ts';

const largestFile = 4 * 1024 * 1024;
const longestShown = 400;

interface Asked {
  readonly typed: string;
  readonly error: string;
  readonly found: LookUp | undefined;
}

/**
 * `GET` and `POST /fingerprint`: whether a sheet was issued here, by its whole fingerprint, its document or its PDF. It is open
 * to anybody, and tells no more than number, revision, day and verdict of a sheet that whoever asks has at hand.
 */
export function fingerprintRoutes(store: Store, templates: Templates): Router {
  const router = Router();
  const send = (response: Response, status: number, asked: Asked): void => {
    response
      .status(status)
      .set('Cache-Control', 'no-store')
      .send(templates.page('fingerprint', fingerprintPage(asked)));
  };
  router.get('/fingerprint', (_request, response) => {
    send(response, 200, { typed: '', error: '', found: undefined });
  });
  router.post('/fingerprint', raw({ type: () => true, limit: largestFile }), async (request, response) => {
    const type = request.get('content-type') ?? '';
    if (/^multipart\/form-data\b/i.test(type)) {
      const found = await lookUpFile(store, fileOf(bytesOf(request), type, 'file'));
      send(response, found.kind === 'unreadable' ? 422 : 200, { typed: '', error: '', found });
      return;
    }
    const typed = new URLSearchParams(new TextDecoder().decode(bytesOf(request))).get('fingerprint') ?? '';
    const reading = readFingerprint(typed);
    const found = reading.ok ? await lookUpFingerprint(store, reading.fingerprint) : undefined;
    const error = reading.ok ? '' : reading.message;
    send(response, reading.ok ? 200 : 422, { typed: typed.slice(0, longestShown), error, found });
  });
  return router;
}
