"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import { useState } from "react";
import { SpaceSearch } from "./space-search";
import { Unread } from "./unread";

const PARTS = [
  { path: "recipes", label: "Recipes" },
  { path: "equipment", label: "Kettles" },
  { path: "ingredients", label: "Ingredients" },
  { path: "brews", label: "Brews" },
  { path: "shared-brews", label: "Shared brews" },
  { path: "tastings", label: "Tastings" },
  { path: "orders", label: "Orders" },
  { path: "people", label: "People" },
  { path: "calendar", label: "Your days" },
  { path: "notices", label: "Notices" },
] as const;

/** What needs more than one person. */
const TOGETHER: readonly string[] = ["shared-brews", "tastings", "orders", "people", "calendar", "notices"];

interface SpaceNavigationProps {
  readonly slug: string;
  readonly name: string;
  /** A bench of one's own has no other people. */
  readonly hasPeople: boolean;
  readonly mayOrder: boolean;
  /** Notices that are not read yet. */
  readonly unread: number;
}

/** The space and its parts; the one that is open says so. On a phone the parts fold away below one button. */
export function SpaceNavigation({ slug, name, hasPeople, mayOrder, unread }: SpaceNavigationProps) {
  const pathname = usePathname();
  // Whoever has gone to another page has chosen.
  const [openAt, setOpenAt] = useState<string | null>(null);
  const isOpen = openAt === pathname;
  const home = `/s/${slug}`;
  const parts = PARTS.filter(({ path }) => (hasPeople || !TOGETHER.includes(path)) && (mayOrder || path !== "orders"));
  return (
    <nav aria-label={name} className="local-nav mx-auto flex max-w-[76rem] flex-wrap items-center gap-x-6 px-4">
      <Link
        href={home}
        aria-current={pathname === home ? "page" : undefined}
        className="min-w-0 flex-1 font-semibold md:flex-none"
      >
        {name}
      </Link>
      <button
        type="button"
        className="button-link fold-button md:hidden"
        aria-expanded={isOpen}
        aria-controls="space-parts"
        onClick={() => setOpenAt(isOpen ? null : pathname)}
      >
        Menu
        {isOpen ? null : <Unread count={unread} />}
      </button>
      <div id="space-parts" className="fold w-full md:contents" data-open={isOpen || undefined}>
        <div className="md:ms-auto">
          <SpaceSearch slug={slug} name={name} />
        </div>
        <ul className="grid w-full grid-cols-2 gap-x-5 md:flex md:flex-wrap">
          {parts.map(({ path, label }) => (
            <li key={path}>
              <Link href={`${home}/${path}`} aria-current={current(pathname, `${home}/${path}`)}>
                {label}
                {path === "notices" ? <Unread count={unread} /> : null}
              </Link>
            </li>
          ))}
        </ul>
      </div>
    </nav>
  );
}

/** "page" for the page itself, "true" for the part that a page lies in. */
function current(pathname: string, href: string): "page" | "true" | undefined {
  if (pathname === href) return "page";
  return pathname.startsWith(`${href}/`) ? "true" : undefined;
}
