import { operations } from "./operations.mjs";
import { errorFacts, scrub } from "./scrub.mjs";

/** What a library or the framework prints becomes a line of the log as well; what it says is scrubbed. */
export function logConsole() {
  for (const [name, level] of Object.entries({ log: "info", info: "info", warn: "warn", error: "error" })) {
    console[name] = (...parts) => {
      const error = parts.find((part) => part instanceof Error);
      const words = parts.filter((part) => typeof part === "string").join(" ");
      operations.log(level, "console", { text: scrub(words), ...(error && errorFacts(error)) });
    };
  }
}
