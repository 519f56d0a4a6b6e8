import Link from "next/link";
import type { SpaceSummary } from "@/lib/server/spaces/reads";
import { ROLE_NAMES } from "@/lib/ui/role-names";

/** The spaces of one person, each with what they are there. */
export function SpaceList({ spaces }: { readonly spaces: readonly SpaceSummary[] }) {
  return (
    <ul className="list-ruled">
      {spaces.map((space) => (
        <li key={space.slug} className="flex items-center justify-between gap-4">
          <Link href={`/s/${space.slug}`} className="target flex-1 py-2 font-serif text-lg">
            {space.name}
          </Link>
          <span className="text-sm text-muted">{space.kind === "person" ? "Your own" : ROLE_NAMES[space.role]}</span>
        </li>
      ))}
    </ul>
  );
}
