/** The process answers; whether the database does, is another question. */
export function GET(): Response {
  return Response.json({ live: true }, { headers: { "Cache-Control": "no-store" } });
}
