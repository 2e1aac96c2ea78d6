/** Where recordings lie and results are filed: a folder or a bucket. Names are relative, with slashes between their parts. */
export interface Storage {
  /** How it is called in sentences: the folder's path, or `s3://` with bucket and prefix. */
  readonly label: string;
  /**
   * The whole of an object.
   *
   * @param most More bytes than this, 0 or more, are refused.
   * @throws StorageFault
   */
  readonly read: (name: string, most: number) => Promise<Uint8Array>;
  /**
   * Writes an object whole, or not at all. Where there is one of this name it stays as it is.
   *
   * @returns Whether it was written; of several writers at once one is told so.
   * @throws StorageFault
   */
  readonly write: (name: string, bytes: Uint8Array) => Promise<boolean>;
  /** Whether there is an object of this name; throws a StorageFault where that is not known. */
  readonly has: (name: string) => Promise<boolean>;
  /** Removes an object; nothing happens where there is none. */
  readonly remove: (name: string) => Promise<void>;
  /** The path of an object's file; left out by what has no files. It stays within the folder, whatever links say. */
  readonly pathOf?: (name: string) => Promise<string>;
}
