/** A state that screens look at. It is made anew with each change and never changed. */
export class Observed<S> {
  private readonly listeners = new Set<() => void>();

  protected constructor(private state: S) {}

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly snapshot = (): S => this.state;

  protected change(part: Partial<S>): void {
    this.state = { ...this.state, ...part };
    for (const listener of this.listeners) listener();
  }
}
