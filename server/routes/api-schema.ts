import type { RequestHandler } from 'express';
import { z } from 'zod';
import { documentSchema } from '../../shared/check-document/index.ts';

/** The check document as JSON Schema 2020-12: what is written, quantities as text. */
const schema = JSON.stringify({
  title: 'Check document',
  ...z.toJSONSchema(documentSchema, { target: 'draft-2020-12', io: 'input' }),
});

/** `GET /api/schema`. The tag lets a reader ask whether it has changed without reading it again. */
export const sendSchema: RequestHandler = (_request, response) => {
  response.set('Cache-Control', 'no-cache').type('application/schema+json').send(schema);
};
