/** A message that could not be judged. */
export interface ParkedMessage {
  /** Its id in the queue. */
  readonly id: string;
  /** When it was parked: UTC, ISO 8601. */
  readonly since: string;
  /** How often it was tried: a count, 0 or more. */
  readonly attempts: number;
  /** What it is filed as; a question mark where it is no message. */
  readonly file: string;
  /** Why, in a sentence or two. */
  readonly reason: string;
}
