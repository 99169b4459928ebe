import { join } from 'node:path';
import express, { type Express } from 'express';
import { assetRoutes } from './assets.ts';
import { apiRoutes } from './routes/api-checks.ts';
import { showBoards } from './routes/boards.ts';
import { showCheck, showLongCheck } from './routes/check.ts';
import { sendDocument, sendLongDocument } from './routes/document.ts';
import { nothingHere, showFailure } from './routes/failures.ts';
import { showDemo } from './routes/demo.ts';
import { jobActions } from './routes/jobs/index.ts';
import { openDocument } from './routes/open.ts';
import { showLongOutlook, showOutlook } from './routes/outlook.ts';
import { collectForm } from './routes/page-body.ts';
import { sheetRoutes } from './routes/sheet.ts';
import { localDoor } from './visits/local-door.ts';
import { mount } from './visits/action.ts';
import { sameSite } from './visits/same-site.ts';
import type { Store } from './store/open-store.ts';
import { securityHeaders } from './security.ts';
import { loadTemplates } from './templates.ts';
import { createTypesetter, fontRoutes } from './typeset/index.ts';

/** What the application is made of. */
export interface AppParts {
  readonly store: Store;
  /** Is told of a fault that is ours, and of trouble with the store; whoever asked only sees that there was one. */
  readonly report?: (error: unknown) => void;
}

/** The whole application, without a port, for whoever uses this machine. */
export async function makeApp({ store, report = console.error }: AppParts): Promise<Express> {
  const templates = loadTemplates(join(import.meta.dirname, '..', 'views'));
  const views = { templates, typesetter: createTypesetter() };
  const desk = { ...views, store };
  const door = await localDoor(store);
  const app = express();
  app.disable('x-powered-by').set('query parser', false);
  app.use(securityHeaders(), assetRoutes(), fontRoutes());
  app.use('/api', apiRoutes(report));
  app.use(sameSite(templates, true));
  mount(app, jobActions(desk), templates, door);
  app.get('/demo', showDemo);
  app.get('/check', showCheck(views));
  app.post('/check', collectForm, showLongCheck(views));
  app.get('/document', sendDocument);
  app.post('/document', collectForm, sendLongDocument);
  app.post('/open', collectForm, openDocument(views));
  for (const outlook of ['layouts', 'reach'] as const) {
    app.get(`/${outlook}`, showOutlook(templates, outlook));
    app.post(`/${outlook}`, collectForm, showLongOutlook(templates, outlook));
  }
  app.get('/boards', showBoards(templates));
  app.use(sheetRoutes(templates));
  app.use(nothingHere(templates));
  app.use(showFailure(templates, report));
  return app;
}
