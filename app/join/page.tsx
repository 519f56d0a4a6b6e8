import type { Metadata } from "next";
import { optionalViewer } from "@/lib/server/session";
import { PageMain } from "@/lib/ui/page-main";
import { JoinPanel } from "./join-panel";

export const metadata: Metadata = { title: "Join a club", referrer: "no-referrer" };

export default async function JoinPage() {
  const viewer = await optionalViewer();
  return (
    <PageMain narrow>
      <h1 className="mb-6">Join a club</h1>
      <JoinPanel viewerName={viewer?.displayName ?? null} />
    </PageMain>
  );
}
