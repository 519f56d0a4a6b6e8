import type { AddressInfo } from "node:net";
import { simpleParser, type ParsedMail } from "mailparser";
import { SMTPServer } from "smtp-server";

export interface MailCatcher {
  readonly url: string;
  readonly mails: readonly ParsedMail[];
  /** Refuses the next so many messages, as a server that is busy does. */
  readonly refuse: (count: number) => void;
  readonly stop: () => Promise<void>;
}

/** A real SMTP server on a port of this machine, which keeps what it is sent. */
export async function catchMail(): Promise<MailCatcher> {
  const mails: ParsedMail[] = [];
  let refusals = 0;
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS"],
    onData(stream, _session, done) {
      simpleParser(stream).then((mail) => {
        if (refusals > 0) {
          refusals -= 1;
          done(Object.assign(new Error("try again later"), { responseCode: 451 }));
          return;
        }
        mails.push(mail);
        done();
      }, done);
    },
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.server.address() as AddressInfo; // it listens on a port, not on a file
  return {
    url: `smtp://127.0.0.1:${String(port)}`,
    mails,
    refuse: (count) => {
      refusals = count;
    },
    stop: () => new Promise((stopped) => server.close(() => stopped())),
  };
}
