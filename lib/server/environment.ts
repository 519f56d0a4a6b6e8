import "server-only";
import { z } from "zod";

const origin = z
  .url({ protocol: /^https?$/, error: "is the address that people open, such as https://brewing.example" })
  .transform((address) => new URL(address).origin);

const settings = z
  .object({
    DATABASE_URL: z.url({ protocol: /^postgres(ql)?$/, error: "is an address that begins with postgresql://" }),
    APP_ORIGIN: origin.optional(),
    NEXTAUTH_URL: origin.optional(),
    NEXTAUTH_SECRET: z.string({ error: "is not set" }).min(32, "has at least 32 characters"),
  })
  .transform((given) => ({
    databaseUrl: given.DATABASE_URL,
    /** The one origin that pages are served from; null on a development server that takes the request's own. */
    appOrigin: given.APP_ORIGIN ?? given.NEXTAUTH_URL ?? null,
    authSecret: given.NEXTAUTH_SECRET,
  }));

type Environment = z.output<typeof settings>;

let known: Environment | null = null;

function read(): Environment {
  // An empty variable is one that is not set.
  const present = Object.entries(process.env).filter(([, value]) => value !== "");
  const parsed = settings.safeParse(Object.fromEntries(present));
  if (parsed.success) return parsed.data;
  const faults = parsed.error.issues.map((issue) => `${issue.path.join(".")} ${issue.message}`);
  throw new Error(`The settings of the environment do not do: ${faults.join("; ")}.`);
}

/** The settings, read when the first of them is asked for: a build has none and needs none. */
export const environment: Environment = {
  get databaseUrl() {
    return (known ??= read()).databaseUrl;
  },
  get appOrigin() {
    return (known ??= read()).appOrigin;
  },
  get authSecret() {
    return (known ??= read()).authSecret;
  },
};
