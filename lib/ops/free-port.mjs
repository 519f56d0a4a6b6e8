import { connect, createServer } from "node:net";

/** Whether nobody listens on a port of this machine, so that we can. */
export async function isFree(port, host = "127.0.0.1") {
  return !(await answers(port)) && (await bind(port, host)) !== null;
}

/** A port that nobody uses now, chosen by the system. */
export async function freePort() {
  const port = await bind(0, "127.0.0.1");
  if (port === null) throw new Error("This machine has no free port.");
  return port;
}

function bind(port, host) {
  return new Promise((resolve) => {
    const server = createServer();
    server.once("error", () => resolve(null));
    server.listen({ port, host, exclusive: true }, () => {
      const address = server.address();
      server.close(() => resolve(address.port));
    });
  });
}

// Some systems let a second program bind a port on one address that another one holds on all.
function answers(port) {
  return new Promise((resolve) => {
    const socket = connect({ port, host: "127.0.0.1" });
    const end = (result) => {
      socket.destroy();
      resolve(result);
    };
    socket.setTimeout(1000, () => end(false));
    socket.once("connect", () => end(true));
    socket.once("error", () => end(false));
  });
}
