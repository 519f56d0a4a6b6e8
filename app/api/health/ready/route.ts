import { connection } from "next/server";
import { isReady } from "@/lib/server/health";

export async function GET(): Promise<Response> {
  await connection(); // asked at each request, never answered from the build
  const ready = await isReady();
  return Response.json({ ready }, { status: ready ? 200 : 503, headers: { "Cache-Control": "no-store" } });
}
