import "server-only";
import { AppError } from "./app-error";

/**
 * Reads a body of at most so many bytes. What says itself that it is longer is refused before a byte is read; the rest is
 * counted while it comes in, because its own word on its length is not believed.
 */
export async function boundedBody(
  request: Request,
  mostBytes: number,
  refusal: (bytes: number) => AppError,
): Promise<Uint8Array<ArrayBuffer>> {
  const said = Number(request.headers.get("content-length") ?? "0");
  if (said > mostBytes) {
    await request.body?.cancel();
    throw refusal(said);
  }
  const chunks: Uint8Array[] = [];
  let length = 0;
  const reader = request.body?.getReader();
  for (let part = await reader?.read(); part !== undefined && !part.done; part = await reader?.read()) {
    length += part.value.length;
    if (length > mostBytes) {
      await reader?.cancel();
      throw refusal(length);
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
