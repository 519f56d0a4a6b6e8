import "server-only";
import { FILE_LIMITS } from "@/lib/model/exchange/file-node";
import { AppError } from "../app-error";
import { boundedBody, tooLarge } from "../bounded-body";

/** What a form adds around a file: names, boundaries and the few fields beside it. */
const AROUND = 64 * 1024;

export interface Upload {
  readonly bytes: Uint8Array;
  readonly fields: Readonly<Record<string, string>>;
}

/**
 * Reads the file of a form, or the text that was pasted in its place. What is too large is refused while it comes in:
 * its own word on its length is not believed.
 */
export async function readUpload(request: Request, mostBytes: number = FILE_LIMITS.bytes): Promise<Upload> {
  const body = await boundedBody(request, mostBytes + AROUND, () => tooLarge("file", mostBytes));
  const form = await formOf(body, request.headers.get("content-type") ?? "");
  const { file, text, ...fields } = Object.fromEntries(form);
  const bytes = file instanceof File && file.size > 0 ? new Uint8Array(await file.arrayBuffer()) : pasted(text);
  if (bytes.length > mostBytes) throw tooLarge("file", mostBytes);
  const plain = Object.entries(fields).filter((entry): entry is [string, string] => typeof entry[1] === "string");
  return { bytes, fields: Object.fromEntries(plain) };
}

function pasted(text: FormDataEntryValue | undefined): Uint8Array {
  if (typeof text === "string" && text.trim() !== "") return new TextEncoder().encode(withoutDeclaration(text));
  throw new AppError("INVALID", "Choose a file, or paste its text.");
}

/** Text that was pasted is not in the encoding any more that its first line names. */
function withoutDeclaration(text: string): string {
  return text.replace(/^\s*<\?xml[^>]*\?>/, (line) => line.replaceAll(/[^\n]/g, " "));
}

async function formOf(body: Uint8Array<ArrayBuffer>, contentType: string): Promise<FormData> {
  try {
    return await new Response(body, { headers: { "content-type": contentType } }).formData();
  } catch (cause) {
    throw new AppError("INVALID", "This is not the form of this page.", { cause });
  }
}
