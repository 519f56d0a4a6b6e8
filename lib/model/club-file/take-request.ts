import { z } from "zod";
import { recordId } from "../written";

const PREFIX = "match.";

/** Who of a club's file is who of this club: fields "match.<person of the file>", empty for nobody. */
export const takeRequest = z.record(z.string(), z.string()).transform((fields, context): Record<string, string> => {
  const matches: Record<string, string> = {};
  for (const [name, value] of Object.entries(fields)) {
    const id = name.slice(PREFIX.length);
    const isMatch = name.startsWith(PREFIX) && recordId.safeParse(id).success;
    if (!isMatch || (value !== "" && !recordId.safeParse(value).success)) {
      context.addIssue({ code: "custom", path: [name], message: "This is no match of two people" });
    } else if (value !== "") matches[id] = value;
  }
  return matches;
});
