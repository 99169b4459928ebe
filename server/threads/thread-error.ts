/** Why no answer came from a thread. */
export type ThreadFault = 'busy' | 'too-slow' | 'ended' | 'cancelled';

export class ThreadError extends Error {
  readonly fault: ThreadFault;

  constructor(fault: ThreadFault, message: string) {
    super(message);
    this.name = 'ThreadError';
    this.fault = fault;
  }
}
