import "server-only";
import { refusalOf } from "../api-route";
import { proveSensor, type SensorSender } from "../proof";
import { requestFacts } from "../request-facts";
import { takeTurn } from "../throttle";

type Handler<C> = (request: Request, sender: SensorSender, context: C) => Promise<Response>;

/** A sensor that was without a network sends what it has; after that, two requests a second are plenty. */
const TURNS = { burst: 120, intervalS: 0.5 } as const;
/** Wrong keys from one address. Guessing one of 256 bits would take longer, but need not be paid for by the others. */
const WRONG = { burst: 30, intervalS: 10 } as const;
const BEARER = /^Bearer (gyle_[\w-]{43})$/;

/**
 * Makes a route for programs that have the key of a sensor. Such a route needs no origin: it reads no cookie, so that a
 * page elsewhere could at most send a request without a key, and a page that knew a key would need our consent
 * (CORS), which is never given, to send it.
 */
export function tokenRoute<C>(handler: Handler<C>): (request: Request, context: C) => Promise<Response> {
  return async (request, context) => {
    const [, token] = BEARER.exec(request.headers.get("authorization") ?? "") ?? [];
    const sender = token === undefined ? null : await proveSensor(token);
    if (sender === null) return refuseStranger(request);
    if (!(await takeTurn(`sensor:${sender.keyId}`, TURNS))) return tooOften(TURNS.intervalS);
    try {
      return await handler(request, sender, context);
    } catch (error) {
      const refusal = refusalOf(error);
      if (refusal === null) throw error;
      return refusal;
    }
  };
}

async function refuseStranger(request: Request): Promise<Response> {
  await request.body?.cancel();
  const { ip } = requestFacts(request.headers, undefined);
  if (!(await takeTurn(`sensor-wrong:${ip}`, WRONG))) return tooOften(WRONG.intervalS);
  const message = "Authorization: this takes “Bearer ” and the key of a sensor that is neither revoked nor expired.";
  return Response.json(
    { message },
    { status: 401, headers: { "cache-control": "no-store", "www-authenticate": 'Bearer realm="readings"' } },
  );
}

function tooOften(intervalS: number): Response {
  const message = "Too many requests; send more readings in each, or wait.";
  const headers = { "cache-control": "no-store", "retry-after": String(Math.ceil(intervalS)) };
  return Response.json({ message }, { status: 429, headers });
}
