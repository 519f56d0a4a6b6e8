import "server-only";
import type { NextAuthOptions } from "next-auth";
import CredentialsProvider from "next-auth/providers/credentials";
import { signInInput } from "@/lib/model/credentials";
import { checkSignIn } from "./accounts/sign-in";
import { environment } from "./environment";
import { findSession } from "./sessions/reads";
import { ABSOLUTE_DAYS, closeSession, openSession } from "./sessions/writes";

// Asked at each request: a build loads this file without an environment.
function isSecure(): boolean {
  return environment.appOrigin?.startsWith("https://") ?? false;
}

/** `__Host-` binds the cookie to this host and to TLS; browsers refuse it over plain http. */
export function sessionCookie(): string {
  return isSecure() ? "__Host-gylebook-session" : "gylebook-session";
}

/** What one request to the sign-in routes brings along. */
export interface RequestFacts {
  readonly ip: string;
  readonly userAgent: string | null;
  /** The session of this browser until now. */
  readonly reference: string | null;
}

/**
 * Settings of next-auth for one request. Its Credentials provider insists on the token strategy, so the "token" is made
 * a random reference to a row of ours: nothing about the person or the role stands in the cookie, and ending the row
 * ends the session on every machine at the next request.
 */
export function authOptions(facts: RequestFacts): NextAuthOptions {
  return {
    secret: environment.authSecret,
    useSecureCookies: isSecure(),
    session: { strategy: "jwt", maxAge: ABSOLUTE_DAYS * 86400 },
    pages: { signIn: "/sign-in", error: "/sign-in", signOut: "/" },
    cookies: {
      sessionToken: {
        name: sessionCookie(),
        options: { httpOnly: true, sameSite: "lax", path: "/", secure: isSecure() },
      },
    },
    providers: [passwordProvider(facts)],
    jwt: referenceTokens(facts),
    callbacks: {
      // Only the name leaves the server; who it is, the reference says.
      session: ({ session, token }) => ({ ...session, user: { name: token.name ?? null } }),
    },
    events: {
      signOut: async () => {
        if (facts.reference !== null) await closeSession(facts.reference);
      },
    },
  };
}

function passwordProvider(facts: RequestFacts): NextAuthOptions["providers"][number] {
  return CredentialsProvider({
    name: "E-mail address and password",
    credentials: {
      email: { label: "E-mail address", type: "email" },
      password: { label: "Password", type: "password" },
    },
    authorize: async (credentials) => {
      const typed = signInInput.safeParse(credentials);
      if (!typed.success) return null;
      const outcome = await checkSignIn({ ...typed.data, ip: facts.ip });
      if (outcome.ok) return { id: outcome.userId, name: outcome.displayName };
      if (outcome.reason === "throttled") throw new Error("Throttled");
      return null;
    },
  });
}

function referenceTokens(facts: RequestFacts): NonNullable<NextAuthOptions["jwt"]> {
  return {
    encode: async ({ token }) => {
      // A token that came out of `decode` keeps its row; a fresh sign-in always gets a new one.
      if (typeof token?.reference === "string") return token.reference;
      if (token?.sub === undefined) throw new Error("A session needs a person");
      if (facts.reference !== null) await closeSession(facts.reference);
      return openSession({ userId: token.sub, userAgent: facts.userAgent });
    },
    decode: async ({ token }) => {
      if (token === undefined) return null;
      const session = await findSession(token);
      return session === null ? null : { sub: session.userId, name: session.displayName, reference: token };
    },
  };
}
