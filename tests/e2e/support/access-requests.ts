import type { Cell } from "@/tests/access/route-rows";
import type { Person } from "@/tests/access/roles";
import type { AccessWorld } from "./access-world";
import type { Answered, Asked } from "./plain-request";

export const ORIGIN = process.env.GYLEBOOK_URL ?? "http://localhost:3000";

/** A request as a page of ours sends it, by one of the people; headers of its own take the place of those. */
export function asked({ cookies }: AccessWorld, person: Person, { headers = {}, ...rest }: Asked): Asked {
  const cookie = cookies[person];
  const isChange = rest.method !== "GET" && rest.method !== "HEAD";
  return { ...rest, headers: { ...(cookie !== "" && { cookie }), ...(isChange && { origin: ORIGIN }), ...headers } };
}

export function cellOf({ status, headers }: Answered): Cell {
  const isSentToSignIn = status === 307 && headers.get("location")?.startsWith("/sign-in?next=") === true;
  return isSentToSignIn ? "sign in" : status;
}
