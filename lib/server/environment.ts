import "server-only";
import { z } from "zod";

const databaseUrl = z.url({ protocol: /^postgres(ql)?$/, error: "must be an address that begins with postgresql://" });
const origin = z.url({ protocol: /^https?$/, error: "must be an address such as https://brewing.example" });
const smtp = z.url({ protocol: /^smtps?$/, error: "must be an address that begins with smtp:// or smtps://" });
// One mailbox, with a name or without: "Brewing circle <brewing@club.example>". A line break would begin another header.
const mailbox = z
  .string({ error: "must be set where SMTP_URL is" })
  .max(200)
  .regex(/^(?:[^<>@\r\n]{1,80} <[^<>@\s]+@[^<>@\s]+>|[^<>@\s]+@[^<>@\s]+)$/, "must be one e-mail address");
const secret = z.string({ error: "must be set" }).min(32, "must have at least 32 characters");

/**
 * The settings, each read when it is asked for: a build has none and needs none, and a command needs no secret.
 */
export const environment = {
  get databaseUrl(): string {
    return read("DATABASE_URL", databaseUrl);
  },

  /** The one origin that pages are served from; null on a development server, which takes the request's own. */
  get appOrigin(): string | null {
    const address = read("APP_ORIGIN", origin.optional()) ?? read("NEXTAUTH_URL", origin.optional());
    return address === undefined ? null : new URL(address).origin;
  },

  get authSecret(): string {
    return read("NEXTAUTH_SECRET", secret);
  },

  /** How mail leaves; null where it is not set up, and notices then stay on the site. */
  get mail(): { readonly smtpUrl: string; readonly from: string } | null {
    const smtpUrl = read("SMTP_URL", smtp.optional());
    return smtpUrl === undefined ? null : { smtpUrl, from: read("MAIL_FROM", mailbox) };
  },
};

function read<T>(name: string, schema: z.ZodType<T>): T {
  // An empty variable is one that is not set.
  const parsed = schema.safeParse(process.env[name] === "" ? undefined : process.env[name]);
  if (parsed.success) return parsed.data;
  throw new Error(`${name} ${parsed.error.issues.map((issue) => issue.message).join(" and ")}.`);
}
