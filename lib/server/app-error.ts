import "server-only";

export type AppErrorCode =
  "UNAUTHENTICATED" | "FORBIDDEN" | "NOT_FOUND" | "CONFLICT" | "INVALID" | "TOO_LARGE" | "BUSY";

/** A refusal that a person caused and can read: the message is written for them. */
export class AppError extends Error {
  override readonly name = "AppError";

  constructor(
    readonly code: AppErrorCode,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}
