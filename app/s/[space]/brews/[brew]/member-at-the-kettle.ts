import { AppError } from "@/lib/server/app-error";
import { optionalViewer, proveMember, type Member } from "@/lib/server/session";

/** A redirect to the sign-in page would throw away what is typed on the run sheet, so it is said instead. */
export async function memberAtTheKettle(space: string): Promise<Member> {
  const viewer = await optionalViewer();
  if (viewer === null) {
    throw new AppError(
      "UNAUTHENTICATED",
      "You are no longer signed in. Sign in on another tab and save again; what you typed stays here.",
    );
  }
  const member = await proveMember(viewer, space);
  if (member === null) throw new AppError("NOT_FOUND", "There is no such brew here.");
  return member;
}
