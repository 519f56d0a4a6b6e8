"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";

const PARTS = [
  { path: "recipes", label: "Recipes" },
  { path: "equipment", label: "Kettles" },
  { path: "ingredients", label: "Ingredients" },
  { path: "brews", label: "Brews" },
  { path: "shared-brews", label: "Shared brews" },
  { path: "orders", label: "Orders" },
  { path: "people", label: "People" },
  { path: "calendar", label: "Your days" },
  { path: "notices", label: "Notices" },
] as const;

/** What needs more than one person. */
const TOGETHER: readonly string[] = ["shared-brews", "orders", "people", "calendar", "notices"];

interface SpaceNavigationProps {
  readonly slug: string;
  readonly name: string;
  /** A bench of one's own has no other people. */
  readonly hasPeople: boolean;
  readonly mayOrder: boolean;
  /** Notices that are not read yet. */
  readonly unread: number;
}

/** The space and its parts; the one that is open says so. */
export function SpaceNavigation({ slug, name, hasPeople, mayOrder, unread }: SpaceNavigationProps) {
  const pathname = usePathname();
  const home = `/s/${slug}`;
  const parts = PARTS.filter(({ path }) => (hasPeople || !TOGETHER.includes(path)) && (mayOrder || path !== "orders"));
  return (
    <nav aria-label={name} className="local-nav flex flex-wrap gap-x-8">
      <Link href={home} aria-current={pathname === home ? "page" : undefined} className="font-semibold">
        {name}
      </Link>
      <ul className="flex flex-wrap gap-x-5">
        {parts.map(({ path, label }) => (
          <li key={path}>
            <Link href={`${home}/${path}`} aria-current={current(pathname, `${home}/${path}`)}>
              {label}
              {path === "notices" && unread > 0 ? (
                <>
                  <span aria-hidden className="count">
                    {unread}
                  </span>
                  <span className="sr-only">{` (${unread} not read)`}</span>
                </>
              ) : null}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** "page" for the page itself, "true" for the part that a page lies in. */
function current(pathname: string, href: string): "page" | "true" | undefined {
  if (pathname === href) return "page";
  return pathname.startsWith(`${href}/`) ? "true" : undefined;
}
