/** What the server says of a delivery: each event is in exactly one of the three. */
export interface DeliveryAnswer {
  readonly stored: readonly string[];
  readonly duplicate: readonly string[];
  readonly rejected: readonly Rejection[];
  /** ISO 8601, by the server's clock. */
  readonly receivedAt: string;
}

export interface Rejection {
  readonly id: string;
  readonly reason: string;
  /** The device used the same count twice; with another count the event is taken. */
  readonly isSequenceTaken: boolean;
}
