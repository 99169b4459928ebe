import type { Request } from 'express';

/** Whether a program asks rather than a person: it is answered in problem details, not with a page. */
export function isForPrograms(request: Request): boolean {
  return request.originalUrl === '/api' || request.originalUrl.startsWith('/api/');
}
