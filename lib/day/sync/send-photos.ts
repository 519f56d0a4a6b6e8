import type { DayDatabase } from "../store/database";

const TOO_LONG_MS = 60_000;

/** Sends pictures one by one, after the numbers. One that is refused stays, with the reason. */
export async function sendPhotos(database: DayDatabase, userId: string): Promise<void> {
  const waiting = await database.getAll("photos");
  for (const photo of waiting) {
    if (photo.userId !== userId || photo.refusal !== null) continue;
    const { id, space, brewId, picture } = photo;
    const path = `/api/brew-day/${encodeURIComponent(space)}/${encodeURIComponent(brewId)}/photos?id=${id}`;
    let response: Response;
    try {
      const headers = { "content-type": picture.type };
      response = await fetch(path, {
        method: "POST",
        headers,
        body: picture,
        signal: AbortSignal.timeout(TOO_LONG_MS),
      });
    } catch {
      return;
    }
    if (response.ok) await database.delete("photos", id);
    else if (response.status < 500 && response.status !== 401 && response.status !== 429) {
      await database.put("photos", { ...photo, refusal: await reasonIn(response) });
    } else return;
  }
}

async function reasonIn(response: Response): Promise<string> {
  const body: unknown = await response.json().catch(() => null);
  const message: unknown = typeof body === "object" && body !== null && "message" in body ? body.message : null;
  return typeof message === "string" ? message : "The server does not take this picture.";
}
