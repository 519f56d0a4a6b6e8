import { dayFile } from "@/lib/server/day-files/read";

interface FileContext {
  readonly params: Promise<{ readonly file: string }>;
}

/** A built file of the brew day. Its name says what is in it, so it never changes. */
export async function GET(request: Request, { params }: FileContext): Promise<Response> {
  const { file } = await params;
  const built = await dayFile(file, request.headers.get("accept-encoding") ?? "");
  if (built === null) return new Response("Not found", { status: 404, headers: { "cache-control": "no-store" } });
  const headers = new Headers({
    "content-type": built.type,
    "cache-control": "public, max-age=31536000, immutable",
    vary: "accept-encoding",
  });
  if (built.encoding !== null) headers.set("content-encoding", built.encoding);
  return new Response(new Uint8Array(built.content), { headers });
}
