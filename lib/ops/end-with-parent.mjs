// Loaded into the server: its standard input is a pipe from the command that started it, and closes with that command,
// even if it is killed. A server left behind would hold the port.
process.stdin.once("end", () => process.kill(process.pid, "SIGTERM"));
process.stdin.resume().unref();
