import type { Metadata } from "next";
import type { ReactNode } from "react";
import { optionalViewer, proveMember, requireMember } from "@/lib/server/session";
import { SpaceNavigation } from "./space-navigation";

interface SpaceLayoutProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly children: ReactNode;
}

export async function generateMetadata({ params }: SpaceLayoutProps): Promise<Metadata> {
  // Nothing is thrown here: the page that says "not found" takes its title from this chain too.
  const viewer = await optionalViewer();
  const member = viewer === null ? null : await proveMember(viewer, (await params).space);
  if (member === null) return {};
  return { title: { default: member.spaceName, template: `%s · ${member.spaceName} · Gylebook` } };
}

export default async function SpaceLayout({ params, children }: SpaceLayoutProps) {
  const { spaceSlug, spaceName, spaceKind } = await requireMember((await params).space);
  return (
    <>
      <div className="no-print border-b border-rule">
        <div className="mx-auto max-w-[76rem] px-4">
          <SpaceNavigation slug={spaceSlug} name={spaceName} hasPeople={spaceKind === "club"} />
        </div>
      </div>
      <main id="content" tabIndex={-1} className="page">
        {children}
      </main>
    </>
  );
}
