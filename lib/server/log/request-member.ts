import "server-only";
import { AppError } from "../app-error";
import { proveMember, type Member } from "../session";
import { requireSignedIn } from "./require-signed-in";

/** The member behind a request of a program on a phone, which needs a status and not a sign-in page. */
export async function requestMember(space: string, asked: "brew" | "tasting" = "brew"): Promise<Member> {
  const member = await proveMember(await requireSignedIn(), space);
  if (member === null) throw new AppError("NOT_FOUND", `There is no such ${asked} here.`);
  return member;
}
