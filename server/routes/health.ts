import { Router } from 'express';
import type { Store } from '../store/open-store.ts';
import { sendProblem } from './api-problem.ts';

/**
 * `GET /health`: the program runs. `GET /ready`: it can do its work, which takes the store, and is not about to stop. For
 * whatever watches over it.
 *
 * @param isStopping whether it takes no more work
 */
export function healthRoutes(store: Store, isStopping: () => boolean): Router {
  const router = Router();
  router.get('/health', (_request, response) => {
    response.set('Cache-Control', 'no-store').json({ status: 'ok' });
  });
  router.get('/ready', async (_request, response) => {
    response.set('Cache-Control', 'no-store');
    if (isStopping()) {
      sendProblem(response, 503, 'The program is stopping.');
      return;
    }
    try {
      await store.ping();
      response.json({ status: 'ready' });
    } catch {
      sendProblem(response, 503, 'The store does not answer.');
    }
  });
  return router;
}
