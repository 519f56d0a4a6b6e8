import { dayFile } from "@/lib/server/day-files/read";

interface FileContext {
  readonly params: Promise<{ readonly file: string }>;
}

/** A built file of the brew day. Its name says what is in it, so it never changes. */
export async function GET(_request: Request, { params }: FileContext): Promise<Response> {
  const built = await dayFile((await params).file);
  if (built === null) return new Response("Not found", { status: 404, headers: { "cache-control": "no-store" } });
  return new Response(new Uint8Array(built.content), {
    headers: { "content-type": built.type, "cache-control": "public, max-age=31536000, immutable" },
  });
}
