import { connection } from "next/server";
import { readiness } from "@/lib/server/health";

export async function GET(): Promise<Response> {
  await connection(); // asked at each request, never answered from the build
  const state = await readiness();
  const ready = state === "ready";
  return Response.json({ ready, state }, { status: ready ? 200 : 503, headers: { "Cache-Control": "no-store" } });
}
