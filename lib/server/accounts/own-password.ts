import "server-only";
import { AppError } from "../app-error";
import { directory } from "../db";
import { passwordMatches } from "../password";
import type { Viewer } from "../session";
import { takeTurn } from "../throttle";

/** Stops somebody who has the session and not the password: it may have been left open on another's device. */
export async function requireOwnPassword({ userId }: Viewer, typed: string): Promise<void> {
  if (!(await takeTurn(`password:${userId}`, { burst: 10, intervalS: 30 }))) {
    throw new AppError("FORBIDDEN", "Too many attempts. Wait half a minute and try again.");
  }
  const { passwordHash } = await directory.appUser.findUniqueOrThrow({
    where: { id: userId },
    select: { passwordHash: true },
  });
  if (!(await passwordMatches(passwordHash, typed)))
    throw new AppError("INVALID", "The present password is not right.");
}
