import type { RequestHandler } from 'express';
import { demoAddress, startAddress, startFixingAddress } from '../check/addresses.ts';
import type { Templates } from '../templates.ts';
import { pageFrame } from '../view-models/page.ts';

/** `GET /`: what this is, and the ways into a check. */
export function showHome(templates: Templates): RequestHandler {
  const page = templates.page('home', { ...pageFrame('Start'), startAddress, startFixingAddress });
  return (_request, response) => {
    response.send(page);
  };
}

/** `GET /demo`: the short address of the demo check. */
export const showDemo: RequestHandler = (_request, response) => {
  response.redirect(303, demoAddress);
};
