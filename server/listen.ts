import { createServer, type RequestListener, type Server } from 'node:http';
import type { Settings } from './settings.ts';

/** A check's address is its content, so an address may be long; this is what one request's headers may hold in all. */
const largestHeader = 64 * 1024;
const patience_ms = 5_000;

const tooLong =
  'HTTP/1.1 431 Request Header Fields Too Large\r\nConnection: close\r\nContent-Type: text/plain; charset=utf-8\r\n\r\n' +
  'This check is too long for an address. Go back, press Check there, and keep it as a file.\n';
const unreadable = 'HTTP/1.1 400 Bad Request\r\nConnection: close\r\n\r\n';

/**
 * Starts to serve.
 *
 * @returns the server, once it listens
 * @throws Error with a sentence for whoever started it, where the port can't be had
 */
export function listen(
  app: RequestListener,
  { host, port }: Pick<Settings, 'host' | 'port'>,
): Promise<Server> {
  const server = createServer({ maxHeaderSize: largestHeader }, app);
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    if (!socket.writable || error.code === 'ECONNRESET') return;
    socket.end(error.code === 'HPE_HEADER_OVERFLOW' ? tooLong : unreadable);
  });
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => reject(new Error(reason(error, port))));
    server.listen(port, host, () => resolve(server));
  });
}

function reason(error: NodeJS.ErrnoException, port: number): string {
  if (error.code === 'EADDRINUSE') {
    return `Port ${port} is taken by another program. Set PORT to a free one, for instance PORT=${port + 1} npm start.`;
  }
  if (error.code === 'EACCES') return `Port ${port} is not for ordinary programs. Set PORT to one over 1023.`;
  return `It can't listen on port ${port}: ${error.message}`;
}

/** Takes no more requests, lets those that run finish, and cuts off what is left after a while. */
export function stop(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const late = setTimeout(() => server.closeAllConnections(), patience_ms);
    late.unref();
    server.close(() => resolve());
    server.closeIdleConnections();
  });
}
