import { Refusal } from "./refusal.mjs";

/** What a child process says, to be waited for by its kind. */
export function mailbox(child) {
  const waiting = new Map();
  const ended = new Promise((_resolve, reject) => {
    child.once("close", (code) => reject(new Refusal(`The writers ended by themselves (exit code ${code}).`)));
  });
  ended.catch(() => undefined);
  child.on("message", (message) => {
    const { resolve } = waiting.get(message.kind) ?? letter(message.kind);
    resolve(message);
  });
  function letter(kind) {
    let resolve;
    const promise = new Promise((done) => {
      resolve = done;
    });
    waiting.set(kind, { promise, resolve });
    return waiting.get(kind);
  }
  return { until: (kind) => Promise.race([(waiting.get(kind) ?? letter(kind)).promise, ended]) };
}
