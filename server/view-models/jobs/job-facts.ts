import type { Job } from '../../store/jobs.ts';

/** A line of what is known of a job. */
export interface Fact {
  readonly what: string;
  readonly said: string;
}

/** What is known of a job, without what is not. */
export function jobFacts(job: Job): Fact[] {
  const facts: readonly (readonly [string, string])[] = [
    ['Client', job.client],
    ['Address', job.address],
    ['Reference', job.reference],
    ['Prepared by', job.preparedBy],
    ['Checked by', job.checkedBy],
    ['Code adopted there', job.edition],
    ['Authority', job.authority],
  ];
  return facts.filter(([, said]) => said !== '').map(([what, said]) => ({ what, said }));
}
