import "server-only";
import { cookies, headers } from "next/headers";
import { notFound, redirect } from "next/navigation";
import { cache } from "react";
import { safePath } from "@/lib/model/safe-path";
import { sessionCookie } from "./auth";
import { proveCalendarReader, proveMember, proveSensor, proveViewer, type Member, type Viewer } from "./proof";

// Proving needs no request, so that it also serves commands, which run outside of one.
export { proveCalendarReader, proveMember, proveSensor, proveViewer, type Member, type Viewer };

const PATH_HEADER = "x-gylebook-path";

/** The viewer, or null for somebody who is not signed in. Asked once a request, however often it is called. */
export const optionalViewer = cache(async (): Promise<Viewer | null> => {
  const reference = (await cookies()).get(sessionCookie())?.value;
  return reference === undefined ? null : proveViewer(reference);
});

export async function requireViewer(): Promise<Viewer> {
  const viewer = await optionalViewer();
  if (viewer !== null) return viewer;
  // Pages do not know their own address; the proxy tells it. It is the client's to forge, so it is checked.
  const path = safePath((await headers()).get(PATH_HEADER));
  redirect(`/sign-in?next=${encodeURIComponent(path)}`);
}

export const requireMember = cache(async (spaceSlug: string): Promise<Member> => {
  const viewer = await requireViewer();
  return (await proveMember(viewer, spaceSlug)) ?? notFound();
});
