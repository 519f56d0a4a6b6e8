import "server-only";
import { z } from "zod";
import { fieldErrors } from "@/lib/model/field-errors";
import { AppError, type AppErrorCode } from "./app-error";
import { environment } from "./environment";
import { rememberWrite } from "./recent-write";
import { isSameOrigin, originOf } from "./same-origin";

const STATUS: Readonly<Record<AppErrorCode, number>> = {
  UNAUTHENTICATED: 401,
  FORBIDDEN: 403,
  NOT_FOUND: 404,
  CONFLICT: 409,
  INVALID: 400,
  TOO_LARGE: 413,
  BUSY: 429,
};

type Handler<R extends Request, C> = (request: R, context: C) => Promise<Response>;

/** Makes a route handler: refuses changing requests from elsewhere and turns errors into their status. */
export function apiRoute<R extends Request, C>(handler: Handler<R, C>): Handler<R, C> {
  return async (request, context) => {
    const changes = request.method !== "GET" && request.method !== "HEAD";
    if (changes && !isSameOrigin(originOf(request.headers), environment.appOrigin)) {
      return refusal(403, "This request did not come from a page of this service.");
    }
    try {
      return await handler(request, context);
    } catch (error) {
      const refused = refusalOf(error);
      if (refused === null) throw error;
      return refused;
    } finally {
      if (changes) await rememberWrite();
    }
  };
}

/** What a route answers to an error that somebody caused; null for a bug. */
export function refusalOf(error: unknown): Response | null {
  if (error instanceof AppError) return refusal(STATUS[error.code], error.message);
  // Left to the framework, this would be an answer that says nothing of how long it may be kept.
  if (isNotFound(error)) return refusal(404, "There is nothing here.");
  if (error instanceof z.ZodError) return Response.json({ fieldErrors: fieldErrors(error) }, { status: 400 });
  return null;
}

/** What `notFound` of the framework throws. */
function isNotFound(error: unknown): boolean {
  return error instanceof Error && "digest" in error && error.digest === "NEXT_HTTP_ERROR_FALLBACK;404";
}

function refusal(status: number, message: string): Response {
  return Response.json({ message }, { status, headers: { "Cache-Control": "no-store" } });
}
