import { readJob, writeJob } from '@truesweep/jobs';
import { galleryJob, galleryRecording, writtenRecording } from '../gallery/galleryRecording.js';

/** An example of the gallery as files: its job and its recording; nothing where there is none of that name. */
export async function exampleFiles(slug: string): Promise<readonly File[] | undefined> {
  const recording = galleryRecording(slug);
  if (!recording) return undefined;
  const { default: text } = await import('../../../examples/outboard-sensor.job.json?raw');
  const job = galleryJob(readJob(text, 'outboard-sensor.job.json'), slug);
  return [
    new File([writeJob(job)], `${slug}.job.json`),
    new File([writtenRecording(recording)], `${slug}.csv`),
  ];
}
