"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";

const PARTS = [
  { path: "recipes", label: "Recipes" },
  { path: "equipment", label: "Kettles" },
  { path: "brews", label: "Brews" },
  { path: "people", label: "People" },
] as const;

interface SpaceNavigationProps {
  readonly slug: string;
  readonly name: string;
  /** A bench of one's own has no other people. */
  readonly hasPeople: boolean;
}

/** The parts of a space; the one that is open says so. */
export function SpaceNavigation({ slug, name, hasPeople }: SpaceNavigationProps) {
  const pathname = usePathname();
  return (
    <nav aria-label={name} className="local-nav">
      <ul className="flex flex-wrap gap-x-5">
        {PARTS.filter(({ path }) => hasPeople || path !== "people").map(({ path, label }) => {
          const href = `/s/${slug}/${path}`;
          const isOpen = pathname === href || pathname.startsWith(`${href}/`);
          return (
            <li key={path}>
              <Link href={href} aria-current={pathname === href ? "page" : isOpen ? "true" : undefined}>
                {label}
              </Link>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}
