import helmet from 'helmet';
import type { RequestHandler } from 'express';

/**
 * The headers that keep a page to itself: nothing but its own files runs or loads, and nobody frames it. The tool speaks
 * plain http on the machine it runs on, so nothing asks a browser to insist on https.
 */
export function securityHeaders(): RequestHandler {
  return helmet({
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'", 'data:'],
        fontSrc: ["'self'"],
        connectSrc: ["'self'"],
        formAction: ["'self'"],
        baseUri: ["'none'"],
        frameAncestors: ["'none'"],
      },
    },
    strictTransportSecurity: false,
  });
}
