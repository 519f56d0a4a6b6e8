import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../project-root.mjs";

const OTHER = "(none)";

/**
 * The route that a path leads to, as in "/s/[space]/recipes/[recipe]": a log with whole paths would have the names of
 * clubs in it, and the secret addresses of calendars.
 */
export function routeFinder(routes = builtRoutes()) {
  const patterns = routes.map((route) => ({ route, pattern: patternOf(route), fixed: fixedParts(route) }));
  // Of two that fit, the one with more words of its own is the page.
  patterns.sort((a, b) => b.fixed - a.fixed);
  return (path) => {
    const [bare] = path.split("?");
    if (bare.startsWith("/_next/")) return "/_next";
    return patterns.find(({ pattern }) => pattern.test(bare))?.route ?? OTHER;
  };
}

function builtRoutes() {
  try {
    const manifest = readFileSync(join(ROOT, ".next", "app-path-routes-manifest.json"), "utf8");
    return [...new Set(Object.values(JSON.parse(manifest)))];
  } catch {
    return [];
  }
}

function patternOf(route) {
  const parts = route.split("/").map((part) => {
    if (/^\[\[\.\.\..+\]\]$/.test(part)) return "(?:.*)";
    if (/^\[\.\.\..+\]$/.test(part)) return ".+";
    if (/^\[.+\]$/.test(part)) return "[^/]+";
    return part.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
  });
  return new RegExp(`^${parts.join("/").replace(/\/\(\?:\.\*\)$/, "(?:/.*)?") || "/"}$`);
}

function fixedParts(route) {
  return route.split("/").filter((part) => part !== "" && !part.startsWith("[")).length;
}
