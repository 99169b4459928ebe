import { join } from 'node:path';
import express, { type Express } from 'express';
import { assetRoutes } from './assets.ts';
import { apiRoutes } from './routes/api-checks.ts';
import { showBoards } from './routes/boards.ts';
import { showCheck, showLongCheck } from './routes/check.ts';
import { sendDocument, sendLongDocument } from './routes/document.ts';
import { nothingHere, showFailure } from './routes/failures.ts';
import { showDemo, showHome } from './routes/home.ts';
import { openDocument } from './routes/open.ts';
import { showLongOutlook, showOutlook } from './routes/outlook.ts';
import { collectForm } from './routes/page-body.ts';
import { sheetRoutes } from './routes/sheet.ts';
import { securityHeaders } from './security.ts';
import { loadTemplates } from './templates.ts';
import { createTypesetter, fontRoutes } from './typeset/index.ts';

/**
 * The whole application, without a port.
 *
 * @param report is told of a fault that is ours; whoever asked only sees that there was one
 */
export function makeApp(report: (error: unknown) => void = console.error): Express {
  const templates = loadTemplates(join(import.meta.dirname, '..', 'views'));
  const views = { templates, typesetter: createTypesetter() };
  const app = express();
  app.disable('x-powered-by').set('query parser', false);
  app.use(securityHeaders(), assetRoutes(), fontRoutes());
  app.use('/api', apiRoutes(report));
  app.get('/', showHome(templates));
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
