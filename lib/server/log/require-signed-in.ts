import "server-only";
import { AppError } from "../app-error";
import { optionalViewer, type Viewer } from "../session";

export async function requireSignedIn(): Promise<Viewer> {
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("UNAUTHENTICATED", "You are not signed in.");
  return viewer;
}
