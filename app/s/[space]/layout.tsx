import type { Metadata } from "next";
import type { ReactNode } from "react";
import { roleMay } from "@/lib/model/roles";
import { countUnread } from "@/lib/server/notices/reads";
import { optionalViewer, proveMember, requireMember } from "@/lib/server/session";
import { SpaceNavigation } from "./space-navigation";

const NOT_FOUND = "Not found";

interface SpaceLayoutProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly children: ReactNode;
}

export async function generateMetadata({ params }: SpaceLayoutProps): Promise<Metadata> {
  // Nothing is thrown here: the page that says "not found" takes its title from this chain too.
  const viewer = await optionalViewer();
  const member = viewer === null ? null : await proveMember(viewer, (await params).space);
  // Without a place for the page's own title, every page says the same to somebody who may not know of it.
  if (member === null) return { title: { default: NOT_FOUND, template: `${NOT_FOUND} · Gylebook` } };
  return { title: { default: member.spaceName, template: `%s · ${member.spaceName} · Gylebook` } };
}

export default async function SpaceLayout({ params, children }: SpaceLayoutProps) {
  const member = await requireMember((await params).space);
  const { spaceSlug, spaceName, spaceKind, role } = member;
  const unread = await countUnread(member);
  return (
    <>
      <div className="no-print border-b border-rule">
        <SpaceNavigation
          slug={spaceSlug}
          name={spaceName}
          hasPeople={spaceKind === "club"}
          mayOrder={roleMay(role, "order")}
          unread={unread}
        />
      </div>
      <main id="content" tabIndex={-1} className="page">
        {children}
      </main>
    </>
  );
}
