import { accessSync, constants } from 'node:fs';

/** Whether there is a program at a place that this user may run. */
export function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
