const ADDRESS = /[^\s"'<>@]+@[^\s"'<>@]+\.[^\s"'<>@]+/g;
const PASSWORD_OF_ADDRESS = /(\w+:\/\/[^\s:/@]*):[^\s@]*@/g;
// Tokens, hashes, session references: long runs without a space. Names of functions and files are shorter.
const SECRET = /[A-Za-z0-9_-]{32,}/g;
const LONGEST = 2000;

/** A text for the log without what must not stand there: addresses of people, passwords, tokens. */
export function scrub(text) {
  return text
    .slice(0, LONGEST)
    .replaceAll(PASSWORD_OF_ADDRESS, "$1:[password]@")
    .replaceAll(ADDRESS, "[address]")
    .replaceAll(SECRET, "[secret]");
}

/**
 * An error as facts: what kind it is and where it came from. Its message stays away where it repeats what was asked for,
 * as those of the database client do.
 */
export function errorFacts(error) {
  if (!(error instanceof Error)) return { error: "thrown", message: scrub(String(error)) };
  const code = typeof error.code === "string" ? { code: error.code.slice(0, 40) } : {};
  const frames = (error.stack ?? "").split("\n").filter((line) => /^\s+at /.test(line));
  const at = frames.slice(0, 8).map((line) => line.trim().slice(3));
  const tells = !/^Prisma|Zod/.test(error.name);
  return { error: error.name, ...code, ...(tells && { message: scrub(error.message.split("\n")[0]) }), at };
}
