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
    const state = { ...this.state, ...part };
    if (Object.keys(part).every((key) => state[key as keyof S] === this.state[key as keyof S])) return;
    this.state = state;
    for (const listener of this.listeners) listener();
  }
}
