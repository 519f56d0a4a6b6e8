import "server-only";

/** What a driver offers to ask; both kinds of question go over one connection. */
interface Connection {
  queryRaw: (question: never) => Promise<unknown>;
  executeRaw: (question: never) => Promise<unknown>;
}

/**
 * Makes the questions of one transaction wait for each other. A read of a record with two of its relations asks for both
 * at once, and one connection answers one question after the other: the driver only queues them, and will stop doing so.
 */
export function oneAtATime<C extends Connection>(connection: C): C {
  let last: Promise<unknown> = Promise.resolve();
  function inTurn<Question, Result>(ask: (question: Question) => Promise<Result>) {
    return (question: Question): Promise<Result> => {
      const answer = last.then(() => ask(question));
      // A refused question is told to whoever asked it, and the next one is asked all the same.
      last = answer.catch(() => undefined);
      return answer;
    };
  }
  return Object.assign(connection, {
    queryRaw: inTurn(connection.queryRaw.bind(connection)),
    executeRaw: inTurn(connection.executeRaw.bind(connection)),
  });
}
