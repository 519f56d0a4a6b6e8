import "server-only";
import { megabytes, PHOTO_LIMITS } from "@/lib/model/photo";
import { AppError } from "../app-error";
import { boundedBody } from "../bounded-body";

/** What a form adds around its file. */
const AROUND = 16 * 1024;

/** The bytes of a photo, sent as they are or as the field “photo” of a form. */
export async function readPhoto(request: Request): Promise<Uint8Array<ArrayBuffer>> {
  const type = request.headers.get("content-type") ?? "";
  if (!type.startsWith("multipart/form-data"))
    return nonEmpty(await boundedBody(request, PHOTO_LIMITS.bytes, tooLarge));
  const body = await boundedBody(request, PHOTO_LIMITS.bytes + AROUND, tooLarge);
  const photo = await fileOf(body, type);
  if (photo.size > PHOTO_LIMITS.bytes) throw tooLarge(photo.size);
  return nonEmpty(new Uint8Array(await photo.arrayBuffer()));
}

async function fileOf(body: Uint8Array<ArrayBuffer>, type: string): Promise<File> {
  const form = await new Response(body, { headers: { "content-type": type } }).formData().catch((cause: unknown) => {
    throw new AppError("INVALID", "Photo: the form cannot be read.", { cause });
  });
  const photo = form.get("photo");
  if (photo instanceof File) return photo;
  throw new AppError("INVALID", "Photo: the form has no file in its field “photo”.");
}

function nonEmpty(bytes: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> {
  if (bytes.length > 0) return bytes;
  throw new AppError("INVALID", "Photo: the file is empty.");
}

function tooLarge(bytes: number): AppError {
  return new AppError(
    "TOO_LARGE",
    `Photo: ${megabytes(bytes)} are too large; a photo has at most ${megabytes(PHOTO_LIMITS.bytes)}.`,
  );
}
