import { Agent, request } from "node:http";

/** A request on its way to one of several processes that serve the same. */
export interface Asked {
  readonly path: string;
  readonly method?: "GET" | "POST";
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
}

export interface Answered {
  readonly status: number;
  readonly body: string;
  /** Where an action leads to. */
  readonly redirect: string | null;
  readonly ms: number;
}

export interface HttpClient {
  readonly ask: (port: number, asked: Asked) => Promise<Answered>;
  readonly close: () => void;
}

/** Keeps its connections, as a browser and a proxy do. */
export function openHttp(most = 16): HttpClient {
  const agent = new Agent({ keepAlive: true, maxSockets: most });
  return { ask: (port, asked) => ask(agent, port, asked), close: () => agent.destroy() };
}

function ask(agent: Agent, port: number, { path, method = "GET", headers = {}, body }: Asked): Promise<Answered> {
  const begun = performance.now();
  return new Promise((resolve, reject) => {
    const sent = request({ agent, host: "127.0.0.1", port, path, method, headers }, (response) => {
      const parts: Buffer[] = [];
      response.on("data", (part: Buffer) => parts.push(part));
      response.once("error", reject);
      response.once("end", () =>
        resolve({
          status: response.statusCode ?? 0,
          body: Buffer.concat(parts).toString("utf8"),
          redirect: response.headers["x-action-redirect"]?.toString() ?? null,
          ms: performance.now() - begun,
        }),
      );
    });
    sent.once("error", reject);
    sent.end(body);
  });
}
