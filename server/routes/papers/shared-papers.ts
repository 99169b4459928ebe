import { Router, type Request, type RequestHandler, type Response } from 'express';
import type { FrontDesk } from '../accounts/sign-in.ts';
import { bytesOf, collectForm } from '../page-body.ts';
import { openShared, partOf } from '../sharing/open-shared.ts';
import {
  beginPaper,
  cancelPaper,
  sendPaper,
  showPaper,
  type PaperDesk,
  type PaperSubject,
} from './paper-desk.ts';

/**
 * The same for whoever has a link: without the notes, and apart from what the office's own people make. Nothing that is kept
 * changes, so their forms need no token.
 */
export function sharedPaperRoutes(front: FrontDesk, desk: PaperDesk): Router {
  const router = Router();
  const forLink =
    (
      act: (subject: PaperSubject, request: Request, response: Response) => Promise<void> | void,
    ): RequestHandler =>
    async (request, response) => {
      const shared = await openShared(front, request, response);
      if (shared !== undefined) await act({ ...shared, token: '', isShared: true }, request, response);
    };
  const work = (request: Request): string => partOf(request, 'sharedWork');
  router.post(
    '/shared/:key/papers',
    collectForm,
    forLink((subject, request, response) => {
      const paper = new URLSearchParams(new TextDecoder().decode(bytesOf(request))).get('paper') ?? '';
      return beginPaper(desk, subject, paper, response);
    }),
  );
  router.get(
    '/shared/:key/papers/:sharedWork',
    forLink((subject, request, response) => showPaper(desk, subject, work(request), request, response)),
  );
  router.get(
    '/shared/:key/papers/:sharedWork/file',
    forLink((subject, request, response) => sendPaper(desk, subject, work(request), response)),
  );
  router.post(
    '/shared/:key/papers/:sharedWork/cancel',
    forLink((subject, request, response) => cancelPaper(desk, subject, work(request), response)),
  );
  return router;
}
