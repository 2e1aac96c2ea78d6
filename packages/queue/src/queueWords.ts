// Every English sentence of this package. They stand here and not in `@truesweep/wording`, whose pages would carry what only a server says.

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'it is not there; make it, or mount its disk',
  ENOTDIR: 'a part of its path is a file, not a folder; name another',
  ENOSPC: 'the disk is full; make room',
  EFBIG: 'the file would be larger than this account may write; make the limit larger',
  EDQUOT: 'the quota of this account is used up; make room',
  EROFS: 'the disk is read-only; mount it to be written to, or name another',
  EACCES: 'this account has no right to it; ask its owner',
  EPERM: 'this account has no right to it; ask its owner',
  ESTALE: 'the share was mounted anew; start again',
  EIO: 'the disk failed; look at it',
};

/** A folder that can't be used at the moment. */
export function folderFaultSentence(folder: string, reason: string): string {
  const why = Object.hasOwn(reasons, reason)
    ? reasons[reason]
    : `the system refused it (${reason})`;
  return `The folder ${folder} can't be used: ${why}.`;
}

const bucketReasons: Readonly<Record<string, string>> = {
  timeout: 'it did not answer in time',
  ECONNREFUSED: 'nothing answers there',
  ENOTFOUND: 'its host is not known',
  NoSuchBucket: 'there is no such bucket; make it, or name another',
  AccessDenied: 'the access key has no right to it; ask its owner',
  InvalidAccessKeyId: 'the access key is not known; look at TRUESWEEP_S3_KEY_ID',
  SignatureDoesNotMatch: 'the access key does not fit; look at TRUESWEEP_S3_KEY_SECRET',
  RequestTimeTooSkewed: 'the clocks of this machine and of the store differ; set them',
  '403': 'it refuses the access key; look at the key, its rights and the clock',
  '503': 'it has too much to do',
  SlowDown: 'it has too much to do',
  ServiceUnavailable: 'it has too much to do',
};

/** A bucket that can't be used at the moment. */
export function bucketFaultSentence(label: string, reason: string): string {
  const why = Object.hasOwn(bucketReasons, reason)
    ? bucketReasons[reason]
    : `the store refused it (${reason})`;
  return `The bucket ${label} can't be used: ${why}.`;
}

export function missingObjectSentence(name: string, place: string): string {
  return `There is no recording ${name} in ${place}; put it back, or drop the message.`;
}

export function objectTooLargeSentence(name: string, most: number): string {
  return `${name} holds more than ${most} bytes, as many as are read; have more read by --largest.`;
}

export function secretInUrlSentence(user: string, secret: string): string {
  return `An address must hold no user and no password, which others would read in the list of processes and in logs. Tell them by ${user} and ${secret} in the environment.`;
}

export function noBucketSentence(bucket: string): string {
  return `“${bucket}” is no bucket's name; write such as s3://results/workshop.`;
}

export const noEndpointSentence =
  'A bucket needs --endpoint: where its store answers, such as https://objects.example:9000.';

export function noKeySentence(name: string): string {
  return `A bucket needs an access key; ${name} in the environment is empty.`;
}

export const noRedisUrlSentence =
  'This is no address of Redis; write such as redis://127.0.0.1:6379 or, encrypted, rediss://queue.example:6380.';

export const caWithoutTlsSentence =
  'A file of certificates goes with an encrypted connection only; write rediss:// in --redis.';

export function caUnreadableSentence(reason: string): string {
  return `No certificates could be read of it (${reason}); name a file with certificates as PEM.`;
}

/** Redis that can't be used: the way to it, or who one is there. */
export function redisFaultSentence(
  label: string,
  what: 'password' | 'right' | 'certificate' | 'unreachable',
  reason = '',
): string {
  switch (what) {
    case 'password':
      return `Redis at ${label} refuses user or password; look at TRUESWEEP_REDIS_USER and TRUESWEEP_REDIS_PASSWORD.`;
    case 'right':
      return `Redis at ${label} lets this user in, but not do what a queue needs; give it the right to all commands on keys that begin with “truesweep:”.`;
    case 'certificate':
      return `The certificate of Redis at ${label} is not trusted (${reason}); name the authority that gave it by --redis-ca.`;
    case 'unreachable':
      return `Redis at ${label} is not reachable (${reason}).`;
  }
}

export const noAppendOnlySentence =
  'Redis keeps no append-only file: what waits is lost when it ends. Set “appendonly yes”.';

export function evictingSentence(policy: string): string {
  return `Redis drops keys when its memory is full (${policy}): messages would be lost. Set “maxmemory-policy noeviction”.`;
}

export const redisBackSentence = 'Redis is reachable again.';

export function noDefinitionSentence(id: string): string {
  return `The queue holds no job of the id ${id.slice(0, 12)}…; put the recording anew, with its job.`;
}

export function wrongDefinitionSentence(sentence: string): string {
  return `The job that the queue holds is wrong: ${sentence}`;
}

export function noMessageSentence(sentence: string): string {
  return `This is no message: ${sentence}`;
}

export function otherIdSentence(id: string): string {
  return `Its id is not that of what it holds (${id.slice(0, 12)}…); put the recording anew.`;
}

export function noSuchStorageSentence(kind: 'folder' | 'bucket'): string {
  return `The recording lies in a ${kind}, and this worker was given none; start it with --recordings and the ${kind}.`;
}

export function programFaultSentence(fault: string): string {
  return `truesweep itself failed on it; report it with the recording (${fault}).`;
}

export function crashedSentence(times: number, how: string): string {
  return `The process that judged it ended ${times} times (${how}); report it with the recording.`;
}

export function outOfMemorySentence(megabytes: number): string {
  return `Judging it needs more memory than the ${megabytes} MB that a process has; have it tried again by a worker with more (--memory).`;
}

export function tooLongSentence(seconds: number): string {
  return `Judging it took longer than ${seconds} s and was ended; have it tried again by a worker with more time (--longest).`;
}

export const stoppedSentence = 'The worker was told to end.';

export const damagedSentence =
  'What Redis holds of it is damaged; drop it, and put the recording anew.';

export const takenOverTooOftenSentence =
  'Its worker ended or stood still again and again while it had it, so that it is tried no more; report it with the recording.';

export function addressInUseSentence(address: string, reason: string): string {
  return `Health and figures can't be told at ${address} (${reason}); name another address by --listen, or none.`;
}

export const wrongListenSentence =
  'Write an address and a port, such as 127.0.0.1:9718 or [::1]:9718, or “none”.';

export function notAWholeSentence(text: string, least: number, most: number): string {
  return `“${text}” is not right; give a whole number from ${least} to ${most}.`;
}

export function notATimeSentence(text: string): string {
  return `“${text}” is no length of time; write such as 500 ms, 30 s, 5 min or 1 h.`;
}

export function notASizeSentence(text: string): string {
  return `“${text}” is no size; write such as 200 MB or 2 GB.`;
}

export function outsideSentence(folder: string): string {
  return `It does not lie in ${folder}, where the workers look; copy it there, or send what it holds to a bucket.`;
}

export const nothingToPutSentence =
  'Nothing to put: name recordings, or folders with files that end in csv, tsv, txt, dat, log, asc or wav.';

export function twiceSentence(option: string, kind: 'folder' | 'bucket'): string {
  return `${option} names a second ${kind}; name one folder and one bucket at most.`;
}

export const noParkedSentence = 'Nothing is parked.';

export function noSuchParkedSentence(id: string): string {
  return `No parked message begins with “${id}”; “truesweep-queue parked” lists them.`;
}

export function severalParkedSentence(id: string): string {
  return `Several parked messages begin with “${id}”; write more of the id.`;
}

export const hiddenValue = '(hidden)';

const plural = (number: number, what: string) => `${number} ${what}${number === 1 ? '' : 's'}`;

/** What a producer did. */
export function putSentence(counts: {
  readonly added: number;
  readonly waiting: number;
  readonly parked: number;
  readonly refused: number;
}): string {
  const { added, waiting, parked, refused } = counts;
  const parts = [
    `${plural(added, 'recording')} put`,
    ...(waiting > 0 ? [`${waiting} in the queue already`] : []),
    ...(parked > 0 ? [`${parked} parked (see “truesweep-queue parked”)`] : []),
    ...(refused > 0 ? [`${refused} refused`] : []),
  ];
  return `${parts.join(', ')}.`;
}

export function putBrokenSentence(sentence: string, put: number): string {
  return `${sentence} ${plural(put, 'recording')} put before; the same command again goes on.`;
}

export function beganSentence(queue: string, place: string, lanes: number): string {
  return `Judging what comes to “${queue}” at ${place}, ${lanes} at once. SIGTERM or Ctrl-C: finishes what is begun, takes no more, ends.`;
}

export function listeningSentence(address: string): string {
  return `Health and figures: http://${address}/healthz, /readyz, /metrics`;
}

export function stoppingSentence(left: number, seconds: number): string {
  return left === 0
    ? 'Ending.'
    : `Ending: ${plural(left, 'recording')} still judged, for ${seconds} s at most.`;
}

export function endedSentence(counts: {
  readonly judged: number;
  readonly known: number;
  readonly parked: number;
  readonly givenBack: number;
}): string {
  const { judged, known, parked, givenBack } = counts;
  const more = [
    ...(known > 0 ? [`${known} had a result before`] : []),
    ...(parked > 0 ? [`${parked} parked`] : []),
    ...(givenBack > 0 ? [`${givenBack} given back to the queue`] : []),
  ];
  return `Ended: ${[`${plural(judged, 'recording')} judged`, ...more].join(', ')}.`;
}

export function parkedSentence(file: string, reason: string): string {
  return `${file}: parked. ${reason}`;
}

export function retriedSentence(file: string, attempt: number, reason: string): string {
  return `${file}: try ${attempt} failed, another follows. ${reason}`;
}

export function takenOverSentence(id: string): string {
  return `${id.slice(0, 12)}…: taken over from a worker that ended or stood still.`;
}

export function doneSentence(file: string, outcome: string): string {
  return `${file}: ${outcome}`;
}

export const outcomeWords: Readonly<Record<string, string>> = {
  pass: 'pass',
  marginal: 'marginal',
  inconclusive: 'inconclusive',
  fail: 'fail',
  refused: 'refused, filed with the reason',
  known: 'has a result already',
};

export function parkedLine(parked: {
  readonly id: string;
  readonly since: string;
  readonly attempts: number;
  readonly file: string;
  readonly reason: string;
}): string {
  const { id, since, attempts, file, reason } = parked;
  return `${id.slice(0, 12)}  ${since}  ${attempts} ${attempts === 1 ? 'try' : 'tries'}  ${file}: ${reason}`;
}

export function triedAgainSentence(count: number): string {
  return `${plural(count, 'parked message')} put back to be tried again.`;
}

export function droppedSentence(count: number): string {
  return `${plural(count, 'parked message')} dropped; ${count === 1 ? 'its recording stays where it is' : 'their recordings stay where they are'}.`;
}

export function statusLines(status: {
  readonly waiting: number;
  readonly judged: number;
  readonly delayed: number;
  readonly parked: number;
  readonly memoryBytes: number;
  readonly isAppendOnly: boolean;
}): readonly string[] {
  const { waiting, judged, delayed, parked, memoryBytes, isAppendOnly } = status;
  return [
    `waiting            ${waiting}`,
    `being judged       ${judged}`,
    `waiting for a try  ${delayed}`,
    `parked             ${parked}`,
    `memory of Redis    ${(memoryBytes / 2 ** 20).toFixed(1)} MB`,
    `append-only file   ${isAppendOnly ? 'yes' : 'no: what waits is lost when Redis ends'}`,
  ];
}

export function unknownWordSentence(word: string, nearest: string | undefined): string {
  return nearest === undefined
    ? `${word} is not known; --help lists what is.`
    : `${word} is not known; it may be meant to be ${nearest}.`;
}

export function lackingWordSentence(what: string): string {
  return `${what} is missing; --help tells what it is.`;
}

export const spareWordSentence =
  'There are more words than the command takes; --help tells which it takes.';

/** What `--help` says. */
export const queueHelp = {
  program:
    'Has recordings of position sensors judged by any number of workers, by way of a queue on Redis. Each recording is judged at least once and has one result.',
  programMore: `
Secrets come out of the environment alone: TRUESWEEP_REDIS_USER, TRUESWEEP_REDIS_PASSWORD, TRUESWEEP_S3_KEY_ID, TRUESWEEP_S3_KEY_SECRET, TRUESWEEP_S3_SESSION_TOKEN.

Example:
  truesweep-queue put --folder /srv/recordings --job outboard-sensor.job.json /srv/recordings/2026
  truesweep-queue work --recordings /srv/recordings --results /srv/results`,
  help: 'tells how it is used',
  version: 'tells the version',
  put: 'Puts recordings into the queue: as paths in a folder that the workers have too, or what they hold into a bucket.',
  paths: 'recordings, and folders in which all files with endings of recordings are taken',
  job: 'the job that they are judged by',
  folder: 'the shared folder in which they lie; workers may have it under another name',
  bucket: 'the bucket that they are sent to, such as s3://recordings/workshop',
  sensor: 'which sensor was recorded; the name in the job when left out',
  date: 'when it was recorded: any text',
  note: 'what else is kept with the result',
  tries:
    'so often a recording is tried while something may pass, such as a store that is not reachable',
  pause: 'the pause after the first try that failed; each further one is twice as long',
  work: 'Judges what comes, until it is told to end.',
  recordings: 'where recordings lie: a folder or s3://bucket; give it twice for one of each',
  results: 'where results are filed: a folder or s3://bucket',
  lanes:
    'so many are judged at once, each by a process of its own; one for each processor when left out',
  memory: 'how much memory a judging process has',
  longest: 'how long a judgement may take',
  largest: 'the largest recording that is read',
  takeover: 'a recording whose worker has not been heard of for so long is given to another',
  takeovers: 'so often, after that it is parked',
  stopWithin: 'when told to end, what is not finished after so long is given back to the queue',
  listen: 'where health and figures are told, or “none”',
  each: 'tells each recording, not only what is parked or tried again',
  parked: 'Lists what could not be judged, with the reasons, the oldest first.',
  retry: 'puts those back whose ids begin so, or “all”',
  drop: 'forgets those whose ids begin so, or “all”',
  status: 'Tells how much waits.',
  json: 'as data: a line of JSON each',
  redis: 'where Redis is: redis://host:port or, encrypted, rediss://host:port',
  redisCa: 'certificates of the authorities that are trusted, as PEM',
  queue: 'the name of the queue',
  endpoint: 'where the object store of buckets answers',
  region: 'the region that requests to it are signed for',
} as const;

export const noQueueNameSentence =
  'The name of a queue has 1 to 64 letters, digits and hyphens; write such as “recordings”.';

export const eitherPlaceSentence =
  'Name either --folder, in which the recordings lie, or --bucket, to which they are sent.';

export const secretOnLineSentence =
  'Secrets are not taken from the command line, where others would read them in the list of processes. Tell them in the environment; --help lists the names.';
