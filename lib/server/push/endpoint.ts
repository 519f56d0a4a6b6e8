import "server-only";
import { isIP } from "node:net";
import { AppError } from "../app-error";
import { environment } from "../environment";

/**
 * Stops an endpoint that this server should not send to: a browser names it, so that whoever is signed in could have us
 * knock anywhere. Its push service is somewhere in the open network, by a name and with TLS.
 */
export function requirePushEndpoint(address: string): URL {
  const url = new URL(address);
  if (environment.isPushLocal) return url;
  const isOpen =
    url.protocol === "https:" &&
    url.port === "" &&
    url.username === "" &&
    url.password === "" &&
    isIP(url.hostname.replace(/^\[|\]$/g, "")) === 0 &&
    /^(?:[a-z0-9-]+\.)+[a-z]{2,}$/.test(url.hostname);
  if (isOpen) return url;
  throw new AppError(
    "INVALID",
    "Endpoint: it takes an https:// address of a push service, by its name and without a port.",
  );
}
