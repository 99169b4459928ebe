import type { RequestHandler } from 'express';
import { demoAddress } from '../check/addresses.ts';

/** `GET /demo`: the short address of the demo check. */
export const showDemo: RequestHandler = (_request, response) => {
  response.redirect(303, demoAddress);
};
