import { parentPort, workerData } from 'node:worker_threads';
import { openCatalog } from '../../store/open.ts';
import { realFiles } from '../ports/files.ts';
import type { FromJobs, ToRead } from './held-jobs.ts';
import { readJobsCiting } from './read-jobs-citing.ts';

/** The thread that reads tables of jobs once and ends. Started by held-jobs.ts only. */
const say = (message: FromJobs) => parentPort!.postMessage(message);
const { dir, jobs } = workerData as ToRead;
try {
  const ports = { files: realFiles, progress: (progress: string) => say({ progress }) };
  say({ jobs: await readJobsCiting(ports, await openCatalog(dir), jobs) });
} catch (error) {
  say({ failed: (error as Error).message });
}
