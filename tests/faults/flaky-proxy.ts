import { connect, createServer, type Server, type Socket } from "node:net";

/** A way to the server on which connections break. */
export interface FlakyProxy {
  readonly close: () => Promise<void>;
  /** How many connections were cut in the middle. */
  readonly cuts: () => number;
  /** From now on none is cut. */
  readonly calm: () => void;
  /** So many ms later arrives whatever is sent, both ways. */
  readonly slow: (ms: number) => void;
}

const CUT_SHARE = 0.15;
const MOST_BYTES_BEFORE_CUT = 9000;
const SLOW_SHARE = 0.2;
const SLOWEST_MS = 400;

/**
 * Passes connections on to a port, or to several in turn. Some are cut after a random number of bytes in one direction: in the middle of a
 * delivery, in the middle of its answer, or between the two. Some are slow.
 */
export function startFlakyProxy(a: {
  readonly port: number;
  readonly to: number | readonly number[];
  readonly random: () => number;
}): Promise<FlakyProxy> {
  const state = { cuts: 0, isCalm: false, slowMs: 0, turn: 0 };
  const ports = [a.to].flat();
  const sockets = new Set<Socket>();
  const server = createServer((phone) => {
    const app = connect(ports[state.turn++ % ports.length] ?? 0, "127.0.0.1");
    const isCut = !state.isCalm && a.random() < CUT_SHARE;
    const delayMs = !state.isCalm && a.random() < SLOW_SHARE ? Math.floor(a.random() * SLOWEST_MS) : 0;
    const both = [phone, app];
    for (const socket of both) sockets.add(socket);
    const end = (): void => {
      for (const socket of both) {
        socket.destroy();
        sockets.delete(socket);
      }
    };
    for (const socket of both) socket.on("error", end).on("close", end);
    const fromPhone = a.random() < 0.5;
    let left = isCut ? 1 + Math.floor(a.random() * MOST_BYTES_BEFORE_CUT) : Infinity;
    const pass = (to: Socket, counts: boolean) => (bytes: Buffer) => {
      const length = counts ? Math.min(bytes.length, left) : bytes.length;
      if (counts) left -= bytes.length;
      setTimeout(() => {
        if (to.writable) to.write(bytes.subarray(0, length));
        if (left > 0) return;
        state.cuts += 1;
        end();
      }, delayMs + state.slowMs);
    };
    phone.on("data", pass(app, fromPhone));
    app.on("data", pass(phone, !fromPhone));
  });
  return listening(server, a.port).then(() => ({
    cuts: () => state.cuts,
    calm: () => {
      state.isCalm = true;
    },
    slow: (ms) => {
      state.slowMs = ms;
    },
    close: () =>
      new Promise((resolve) => {
        for (const socket of sockets) socket.destroy();
        server.close(() => resolve());
      }),
  }));
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", resolve);
  });
}
