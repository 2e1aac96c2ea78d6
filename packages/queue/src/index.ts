export { type JobDefinition, jobDefinition } from './message/jobDefinition.js';
export type { Message, ReadAs } from './message/message.js';
export { messageId } from './message/messageId.js';
export { readMessage } from './message/readMessage.js';
export {
  openQueue,
  type PutOutcome,
  type PutRecording,
  type QueueCounts,
  type QueueOptions,
  type QueueStatus,
  type RecordingQueue,
} from './queue/openQueue.js';
export type { ParkedMessage } from './queue/parkedMessage.js';
export { RedisFault, type RedisFaultCode } from './redis/redisFault.js';
export { type RedisPlace, redisLabel } from './redis/redisPlace.js';
export { fileResult, refusalName, resultName } from './results/fileResult.js';
export { type BucketPlace, bucketStorage } from './storage/bucketStorage.js';
export { folderStorage } from './storage/folderStorage.js';
export { isObjectName } from './storage/objectName.js';
export type { Storage } from './storage/storage.js';
export { StorageFault, type StorageFaultCode } from './storage/storageFault.js';
export {
  type RecordingWorker,
  startWorker,
  type WorkerEvent,
  type WorkerOptions,
} from './worker/startWorker.js';
