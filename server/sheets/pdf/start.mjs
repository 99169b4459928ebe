// A thread does not take over its program's way of loading TypeScript: it sets that up, and then begins.
import { register } from 'tsx/esm/api';

register();
await import('./worker.ts');
