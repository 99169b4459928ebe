import type { RequestHandler } from 'express';
import { catalogueListing } from '../../calc/catalogue/index.ts';

/** `GET /api/catalogue`: every row a document can name, with its source. It changes only with the tool. */
export const sendCatalogue: RequestHandler = (_request, response) => {
  response.set('Cache-Control', 'no-cache').json(catalogueListing());
};
