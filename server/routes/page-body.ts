import { raw, type Request, type RequestHandler } from 'express';

const largestForm = 512 * 1024;

/** Collects the bytes of a form or a file up to a size that no check comes near. */
export const collectForm: RequestHandler = raw({ type: () => true, limit: largestForm });

/** The bytes of a collected body. */
export function bytesOf(request: Request): Uint8Array {
  const body: unknown = request.body;
  return body instanceof Uint8Array ? body : new Uint8Array();
}

/** What stands after the first `?` of the address. */
export function queryOfRequest(request: Request): string {
  const at = request.originalUrl.indexOf('?');
  return at < 0 ? '' : request.originalUrl.slice(at + 1);
}
