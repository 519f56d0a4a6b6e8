import "server-only";
import { AppError } from "./app-error";

/** The value of a body that is JSON in UTF-8. */
export function jsonOf(body: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(body));
  } catch (cause) {
    throw new AppError("INVALID", "The request is not JSON in UTF-8. Nothing was kept.", { cause });
  }
}
