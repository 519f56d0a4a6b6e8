import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";

/** The command line of a living process; null when there is none, and empty where the system does not tell. */
export function commandOf(pid) {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (error.code === "ESRCH") return null;
  }
  if (process.platform === "linux") {
    try {
      const command = readFileSync(`/proc/${pid}/cmdline`, "utf8").replaceAll("\0", " ").trim();
      return command === "" ? "(ended, and not yet buried)" : command;
    } catch {
      return null;
    }
  }
  const { status, stdout } = spawnSync("ps", ["-p", String(pid), "-o", "command="], { encoding: "utf8" });
  return status === 0 ? stdout.trim() : "";
}

/** Whether a number that PostgreSQL wrote down belongs to another program by now. */
export function isTakenByAnother(pid) {
  const command = commandOf(pid);
  return command !== null && command !== "" && !command.includes("postgres");
}

/** Whether a process is one of the commands in this folder that keep a database running. */
export function isOurCommand(pid) {
  if (pid === null || pid === process.pid) return false;
  const command = commandOf(pid);
  return command !== null && (command === "" || /lib[\\/]ops[\\/]/.test(command));
}
