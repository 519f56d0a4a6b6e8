import "server-only";
import type { NextRequest } from "next/server";
import NextAuth from "next-auth";
import { authOptions, sessionCookie } from "./auth";
import { environment } from "./environment";
import { requestFacts } from "./request-facts";

interface AuthContext {
  readonly params: Promise<{ readonly nextauth: string[] }>;
}

/** Answers the routes of next-auth: sign-in, sign-out and who is signed in. */
export async function answerAuth(request: NextRequest, context: AuthContext): Promise<Response> {
  // next-auth takes its own address from the environment only; a forged Host must not decide where a link leads.
  if (environment.appOrigin !== null) process.env.NEXTAUTH_URL = environment.appOrigin;
  const facts = requestFacts(request.headers, request.cookies.get(sessionCookie())?.value);
  return (await NextAuth(request, { params: await context.params }, authOptions(facts))) as Response;
}
