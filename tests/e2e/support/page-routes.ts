import { readdirSync } from "node:fs";
import { sep } from "node:path";
import { fileURLToPath } from "node:url";

const APP = fileURLToPath(new URL("../../../app", import.meta.url));

/** The route of every page of the app, as Next writes it: "/s/[space]/recipes/[recipe]". A new page is one of them. */
export const PAGE_ROUTES: readonly string[] = readdirSync(APP, { recursive: true, encoding: "utf8" })
  .map((file) => `/${file.split(sep).join("/")}`)
  .filter((file) => file.endsWith("/page.tsx"))
  .map((file) => file.slice(0, -"/page.tsx".length) || "/")
  .sort();

/** The pages of a club, which only its own people see. */
export const CLUB_ROUTES = PAGE_ROUTES.filter((route) => route.startsWith("/s/"));

/** The address of a route; a part in brackets that has no value here is a page that the tests have not met yet. */
export function addressOf(route: string, parts: Readonly<Record<string, string>>): string {
  return route.replaceAll(/\[([^\]]+)\]/g, (_whole, name: string) => {
    const value = parts[name];
    if (value === undefined) throw new Error(`the tests have no value for [${name}] in ${route}`);
    return value;
  });
}
