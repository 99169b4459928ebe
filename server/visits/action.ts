import { raw, type IRouter, type Request, type RequestHandler, type Response } from 'express';
import { sendFailure } from '../routes/failures.ts';
import { fileOf } from '../routes/multipart.ts';
import type { Templates } from '../templates.ts';
import type { Role } from '../store/tables.ts';
import { visitOf } from './door.ts';
import { isToken } from './token.ts';
import { mayActAs, type Visit } from './visit.ts';

/** A request that has been let in: who asks, the parts of the address, and what was sent. */
export interface Asked {
  readonly visit: Visit;
  /** A part of the address by its name. */
  readonly part: (name: string) => string;
  readonly query: URLSearchParams;
  /** The fields of the form that was sent. */
  readonly fields: URLSearchParams;
  /** A file of the form that was sent; empty where there is none. */
  readonly file: (name: string) => Uint8Array;
  readonly request: Request;
  readonly response: Response;
}

/** Something to be asked for: where, by whom, and what then happens. */
export interface Action {
  readonly method: 'get' | 'post';
  readonly path: string;
  readonly needs: Role;
  readonly act: (asked: Asked) => Promise<void> | void;
}

const largestBody = 4 * 1024 * 1024;
const body = raw({ type: () => true, limit: largestBody });

/**
 * Puts actions where they are asked for. Whoever may not is refused, and so is a form without the token of our own pages;
 * answers are kept by no cache, since they change and are for one person.
 */
export function mount(router: IRouter, actions: readonly Action[], templates: Templates): void {
  for (const { method, path, needs, act } of actions) {
    const handler: RequestHandler = async (request, response) => {
      response.set('Cache-Control', 'no-store');
      const visit = visitOf(request);
      if (!mayActAs(visit.role, needs)) {
        sendFailure(templates, response, 403, notYours);
        return;
      }
      const asked = readAsked(visit, request, response);
      const given = asked.fields.get('token') ?? new TextDecoder().decode(asked.file('token'));
      if (method === 'post' && !isToken(given, visit.token)) {
        sendFailure(templates, response, 403, oldForm);
        return;
      }
      await act(asked);
    };
    if (method === 'get') router.get(path, handler);
    else router.post(path, body, handler);
  }
}

const notYours = {
  heading: 'That is not yours to do',
  message:
    'You may look at these jobs and not change them. An owner of the office can give you more. Nothing was changed.',
};
const oldForm = {
  heading: 'That page was too old',
  message: 'Go back, load the page again, and do it once more. Nothing was changed.',
};

function readAsked(visit: Visit, request: Request, response: Response): Asked {
  const sent: unknown = request.body;
  const bytes = sent instanceof Uint8Array ? sent : new Uint8Array();
  const type = request.get('content-type') ?? '';
  const isFile = /^multipart\/form-data\b/i.test(type);
  const at = request.originalUrl.indexOf('?');
  return {
    visit,
    request,
    response,
    part: (name) => {
      const value: unknown = request.params[name];
      // No id has such a sign in it, and PostgreSQL takes no text that has.
      return typeof value === 'string' && !value.includes('\0') ? value : '';
    },
    query: new URLSearchParams(at < 0 ? '' : request.originalUrl.slice(at + 1)),
    fields: new URLSearchParams(isFile ? '' : new TextDecoder().decode(bytes)),
    file: (name) => (isFile ? fileOf(bytes, type, name) : new Uint8Array()),
  };
}
