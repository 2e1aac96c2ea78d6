import { InputError } from '@truesweep/core';
import {
  noBucketSentence,
  noEndpointSentence,
  noKeySentence,
  secretInUrlSentence,
} from '../queueWords.js';
import { bucketStorage } from './bucketStorage.js';
import { folderStorage } from './folderStorage.js';
import type { Storage } from './storage.js';

/** What an object store of the command's options is opened with. */
export interface StoreSettings {
  readonly endpoint?: string | undefined;
  readonly region?: string | undefined;
}

/** Which of the two kinds of storage a place is. */
export type StorageKind = 'folder' | 'bucket';

/** A place as it was named, `s3://bucket/prefix` or a folder, and what kind of storage it is. */
export function kindOfPlace(place: string): StorageKind {
  return /^s3:\/\//i.test(place) ? 'bucket' : 'folder';
}

/** What keys of an object store are told by. */
const names = {
  id: 'TRUESWEEP_S3_KEY_ID',
  secret: 'TRUESWEEP_S3_KEY_SECRET',
  token: 'TRUESWEEP_S3_SESSION_TOKEN',
} as const;

/**
 * Opens the storage that a command names. Keys come out of the environment alone.
 *
 * @param option The option that names it, for what is refused.
 * @throws InputError for a place that is none, or holds a secret, or a bucket without endpoint or keys.
 */
export function openStorage(
  place: string,
  option: string,
  { endpoint, region }: StoreSettings,
  env: NodeJS.ProcessEnv,
): Storage {
  if (kindOfPlace(place) === 'folder') return folderStorage(place);
  const [bucket = '', ...rest] = place.slice('s3://'.length).split('/');
  if (place.includes('@'))
    throw new InputError('unexpected', option, secretInUrlSentence(names.id, names.secret));
  if (!/^[a-z0-9][a-z0-9.-]{1,61}[a-z0-9]$/.test(bucket)) {
    throw new InputError('not-a-name', option, noBucketSentence(bucket));
  }
  if (endpoint === undefined) throw new InputError('missing', '--endpoint', noEndpointSentence);
  const { [names.id]: keyId, [names.secret]: keySecret, [names.token]: sessionToken } = env;
  if (!keyId || !keySecret) {
    const lacking = keyId ? names.secret : names.id;
    throw new InputError('missing', lacking, noKeySentence(lacking));
  }
  const prefix = rest.filter((part) => part !== '').join('/');
  return bucketStorage({
    endpoint: endpointOf(endpoint),
    bucket,
    keyId,
    keySecret,
    ...(region !== undefined && { region }),
    ...(prefix !== '' && { prefix }),
    ...(sessionToken && { sessionToken }),
  });
}

function endpointOf(text: string): string {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url && (url.username !== '' || url.password !== '')) {
    throw new InputError('unexpected', '--endpoint', secretInUrlSentence(names.id, names.secret));
  }
  if (!url || !['http:', 'https:'].includes(url.protocol) || url.search !== '' || url.hash !== '') {
    throw new InputError('not-a-name', '--endpoint', noEndpointSentence);
  }
  return url.href.replace(/\/+$/, '');
}
