import "server-only";
import { environment } from "./environment";

const CHECKED = [
  "databaseUrl",
  "databaseDirectUrl",
  "databaseReplicaUrl",
  "furtherDatabases",
  "mail",
  "pushKeys",
  "pushSubject",
  "blobs",
] as const;
const LEAST_DIFFERENT = 10;
const EXAMPLES = /change.?me|secret|password|example|gylebook/i;

/**
 * Reads every setting once when a server starts, so that a wrong one ends it there and not at the first mail. The secret
 * must be one that a machine made: what signs a session is guessed from a list if it stands in one.
 */
export function checkSettings(): void {
  requireStrong(environment.authSecret);
  // Each is a getter that throws.
  for (const name of CHECKED) Reflect.get(environment, name);
  if (environment.appOrigin === null) {
    throw new Error(
      "APP_ORIGIN must be set to the address that the pages are served from, as in https://brewing.example.",
    );
  }
}

/** The framework would go on without what its start has refused, and answer every request with an error. */
export function stopUnlessSet(): void {
  try {
    checkSettings();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  }
}

function requireStrong(secret: string): void {
  if (new Set(secret).size >= LEAST_DIFFERENT && !EXAMPLES.test(secret)) return;
  throw new Error("NEXTAUTH_SECRET is easily guessed; make one with: openssl rand -base64 32.");
}
