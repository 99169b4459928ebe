import type { RequestHandler } from 'express';
import { textsOf, written } from '../form/index.ts';
import type { Templates } from '../templates.ts';
import { boardsFound } from '../view-models/form/board-picker.ts';
import { queryOfRequest } from './page-body.ts';

/** `GET /boards`: the boards that go by a name, as the list under the field in which it is typed. */
export function showBoards(templates: Templates): RequestHandler {
  return (request, response) => {
    const sent = textsOf(queryOfRequest(request));
    const system = written(sent, 'units') === 'metric' ? 'metric' : 'inch-pound';
    const picker = boardsFound(written(sent, 'board.material'), system);
    response.set('Cache-Control', 'no-cache').send(templates.partial('boards', picker));
  };
}
