import "server-only";
import { AppError } from "./app-error";

/** Reads a body of at most so many bytes. What is longer is refused while it comes in: its own word on its length is not believed. */
export async function boundedBody(
  request: Request,
  mostBytes: number,
  refusal: () => AppError,
): Promise<Uint8Array<ArrayBuffer>> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const reader = request.body?.getReader();
  for (let part = await reader?.read(); part !== undefined && !part.done; part = await reader?.read()) {
    length += part.value.length;
    if (length > mostBytes) {
      await reader?.cancel();
      throw refusal();
    }
    chunks.push(part.value);
  }
  const body = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    body.set(chunk, at);
    at += chunk.length;
  }
  return body;
}

export function tooLarge(what: string, mostBytes: number): AppError {
  const most = mostBytes >= 1024 * 1024 ? `${String(mostBytes / 1024 / 1024)} MB` : `${String(mostBytes / 1024)} kB`;
  return new AppError("TOO_LARGE", `The ${what} is larger than ${most}; that is the most that is read.`);
}
