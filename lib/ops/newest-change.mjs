import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** When the newest file in these files and folders was changed; 0 when there is none. */
export function newestChange(paths) {
  return Math.max(0, ...paths.filter((path) => existsSync(path)).map(changeOf));
}

function changeOf(path) {
  const { mtimeMs } = statSync(path);
  if (!statSync(path).isDirectory()) return mtimeMs;
  // The time of a folder counts too: it changes when a file is taken out of it.
  return Math.max(mtimeMs, newestChange(readdirSync(path).map((name) => join(path, name))));
}

/** Whether something made is missing or older than one of the things it was made of. */
export function isStale(made, sources) {
  return !existsSync(made) || statSync(made).mtimeMs < newestChange(sources);
}
