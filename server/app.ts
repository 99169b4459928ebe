import { join } from 'node:path';
import express, { type Express } from 'express';
import { assetRoutes } from './assets.ts';
import { logRequests, type Log } from './log.ts';
import { ownAccount } from './routes/accounts/account.ts';
import { peopleActions } from './routes/accounts/people.ts';
import { signInRoutes } from './routes/accounts/sign-in.ts';
import { apiRoutes } from './routes/api-checks.ts';
import { showBoards } from './routes/boards.ts';
import { showCheck, showLongCheck } from './routes/check.ts';
import { sendDocument, sendLongDocument } from './routes/document.ts';
import { nothingHere, showFailure } from './routes/failures.ts';
import { showDemo } from './routes/demo.ts';
import { healthRoutes } from './routes/health.ts';
import { fingerprintRoutes } from './routes/issued/fingerprint.ts';
import { issuedActions } from './routes/issued/index.ts';
import { jobActions } from './routes/jobs/index.ts';
import { paperActions } from './routes/papers/job-papers.ts';
import { sharedPaperRoutes } from './routes/papers/shared-papers.ts';
import { openJobPaperMaker } from './papers/make-job-paper.ts';
import { createWorks } from './papers/works.ts';
import { openDocument } from './routes/open.ts';
import { showLongOutlook, showOutlook } from './routes/outlook.ts';
import { collectForm } from './routes/page-body.ts';
import { pdfSender } from './routes/sheet-pdf.ts';
import { createPaperSetter } from './sheets/pdf/set-sheet.ts';
import { sheetHead, sheetRoutes } from './routes/sheet.ts';
import { linkActions } from './routes/sharing/links.ts';
import { sharedRoutes } from './routes/sharing/shared.ts';
import { showWorking } from './routes/working.ts';
import { mount } from './visits/action.ts';
import { guard } from './visits/door.ts';
import { openStudy, type Study } from './check/study.ts';
import { makeLimits } from './visits/limits.ts';
import { localDoor } from './visits/local-door.ts';
import { sameSite } from './visits/same-site.ts';
import { siteDoor } from './visits/site-door.ts';
import type { SiteSettings } from './settings.ts';
import type { Store } from './store/open-store.ts';
import { securityHeaders } from './security.ts';
import { createPdfWorkers, type PdfWorkers } from './sheets/pdf/workers.ts';
import { loadTemplates } from './templates.ts';
import { fontRoutes } from './typeset/index.ts';

/** What the application is made of. */
export interface AppParts {
  readonly store: Store;
  readonly log: Log;
  /** Where people reach it, who then sign in; undefined: whoever uses this machine, without. */
  readonly site: SiteSettings | undefined;
  readonly isStopping?: () => boolean;
  /** Sets the PDFs. */
  readonly pdfs?: PdfWorkers;
  /** Works checks out. */
  readonly study?: Study;
}

/**
 * The whole application, without a port. What is mounted before the guard is open to anybody; the rest is for whoever the
 * door lets in, and an `Action` says besides which role it takes.
 */
export async function makeApp({
  store,
  log,
  site,
  isStopping = () => false,
  pdfs = createPdfWorkers(),
  study = openStudy(),
}: AppParts): Promise<Express> {
  const templates = loadTemplates(join(import.meta.dirname, '..', 'views'));
  const views = { templates, study };
  const limits = makeLimits(templates);
  const pdfDesk = { templates, setter: createPaperSetter(pdfs), report: log.report };
  const sendPdf = pdfSender(pdfDesk);
  const works = createWorks(log.report);
  const papers = { store, templates, works, maker: openJobPaperMaker(pdfs) };
  const app = express();
  app
    .disable('x-powered-by')
    .set('query parser', false)
    .set('trust proxy', site?.proxies ?? 0);
  app.use(securityHeaders(site?.isSecure ?? false), assetRoutes(), fontRoutes());
  app.use(logRequests(log), healthRoutes(store, isStopping));
  app.use(sameSite(templates, site));
  app.get('/sheet-head.css', sheetHead);
  if (site !== undefined) {
    const desk = { store, templates, site, limits, log };
    app.use(['/sign-in', '/shared', '/fingerprint'], limits.open);
    app.use(signInRoutes(desk), sharedRoutes({ ...desk, study }, sendPdf), sharedPaperRoutes(desk, papers));
  }
  app.use(fingerprintRoutes(store, templates));
  app.use(guard(templates, site === undefined ? await localDoor(store) : await siteDoor(store, site)));
  if (site !== undefined) {
    app.use(limits.person);
    app.use(
      [
        '/layouts',
        '/reach',
        '/props',
        '/sheet.pdf',
        '/installer.pdf',
        '/api/layouts',
        '/api/reach',
        '/api/props',
      ],
      limits.search,
    );
  }
  app.use('/api', apiRoutes(study, log.report));
  mount(app, [...jobActions({ ...views, store }), ...paperActions(papers)], templates);
  mount(app, issuedActions({ ...views, ...pdfDesk, store }), templates);
  if (site !== undefined) {
    const desk = { store, templates, site, limits, log };
    mount(app, [...ownAccount(desk), ...peopleActions(desk), ...linkActions(desk)], templates);
  }
  app.get('/demo', showDemo);
  app.get('/check', showCheck(views));
  app.post('/check', collectForm, showLongCheck(views));
  app.get('/working/:check', showWorking(views));
  app.post('/working/:check', collectForm, showWorking(views));
  app.get('/document', sendDocument);
  app.post('/document', collectForm, sendLongDocument);
  app.post('/open', collectForm, openDocument(views));
  for (const outlook of ['layouts', 'reach', 'props'] as const) {
    app.get(`/${outlook}`, showOutlook({ templates, study, outlook }));
    app.post(`/${outlook}`, collectForm, showLongOutlook({ templates, study, outlook }));
  }
  app.get('/boards', showBoards(templates));
  app.use(sheetRoutes(views, sendPdf));
  app.use(nothingHere(templates));
  app.use(showFailure(templates, log.report));
  return app;
}
