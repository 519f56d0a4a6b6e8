import type { ActionResult } from "@/lib/model/action-result";
import type { DraftChange, DraftOutcome, RecipeDraft } from "@/lib/model/recipe-draft";
import type { LocalDrafts } from "./local-drafts";

/** How the draft on the screen is kept. It says "saved" only when the server said so, of what is on the screen. */
export type KeepStatus =
  | { readonly kind: "nothing" | "saving" | "retrying" | "gone" }
  | { readonly kind: "saved"; readonly at: Date }
  | { readonly kind: "refused"; readonly why: string }
  | { readonly kind: "stale"; readonly newer: RecipeDraft };

/** What is kept of a draft, apart from where and on top of what. */
export type Content = Pick<DraftChange, "title" | "kept">;

export interface DraftKeeperInput {
  readonly id: string;
  readonly baseRev: number | null;
  /** What the server has; null for nothing. */
  readonly initial: Pick<RecipeDraft, "lockVersion" | "savedAt"> | null;
  readonly content: () => Content;
  readonly send: (change: DraftChange) => Promise<ActionResult<DraftOutcome>>;
  readonly local: LocalDrafts;
  /** What the server has from now on. */
  readonly remember: (draft: RecipeDraft | null) => void;
}

const PAUSE_MS = 700;
const LONGEST_WAIT_MS = 1800;
/** Out of the way of the keystroke itself. */
const LOCAL_MS = 30;
const RETRY_MS = [2000, 4000, 8000, 15_000, 30_000] as const;

/** Keeps a draft while it is written: here at once, on the server when somebody pauses, again and again until it is there. */
export class DraftKeeper {
  private status: KeepStatus;
  private lockVersion: number;
  private baseRev: number | null;
  /** What was changed since the server last took it. */
  private firstChangeMs: number | null = null;
  private failures = 0;
  private isSending = false;
  private isPaused = false;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private localTimer: ReturnType<typeof setTimeout> | undefined;
  private readonly listeners = new Set<() => void>();

  constructor(private readonly input: DraftKeeperInput) {
    const { initial } = input;
    this.lockVersion = initial?.lockVersion ?? 0;
    this.baseRev = input.baseRev;
    this.status = initial === null ? { kind: "nothing" } : { kind: "saved", at: initial.savedAt };
  }

  readonly state = (): KeepStatus => this.status;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Something was written. */
  readonly changed = (): void => {
    this.firstChangeMs ??= Date.now();
    clearTimeout(this.localTimer);
    this.localTimer = setTimeout(this.keepLocally, LOCAL_MS);
    if (this.isPaused || this.isHeldUp()) return;
    if (this.failures === 0) this.tell({ kind: "saving" });
    this.schedule();
  };

  /** Before the page may go away: at least this browser has it. */
  readonly keepLocally = (): void => {
    clearTimeout(this.localTimer);
    if (this.firstChangeMs !== null) this.input.local.write({ change: this.change(), atMs: Date.now() });
  };

  /** Now instead of after the pause: the network is back, the page is being left. */
  readonly hurry = (): void => {
    this.keepLocally();
    if (this.firstChangeMs === null || this.isPaused || this.isHeldUp()) return;
    clearTimeout(this.timer);
    void this.sendNow();
  };

  /** Another page was there later; this one goes on all the same, over what the other one kept. */
  readonly takeOver = (lockVersion: number): void => {
    this.lockVersion = lockVersion;
    this.failures = 0;
    this.tell({ kind: "saving" });
    this.firstChangeMs ??= Date.now();
    void this.sendNow();
  };

  /** What was opened instead is what the server has, or nothing at all. */
  readonly reset = (a: { readonly baseRev: number | null; readonly initial: RecipeDraft | null }): void => {
    clearTimeout(this.timer);
    clearTimeout(this.localTimer);
    this.input.local.clear(this.input.id);
    this.input.remember(a.initial);
    this.firstChangeMs = null;
    this.failures = 0;
    this.start();
    this.baseRev = a.baseRev;
    this.lockVersion = a.initial?.lockVersion ?? 0;
    this.tell(a.initial === null ? { kind: "nothing" } : { kind: "saved", at: a.initial.savedAt });
  };

  /** While it is being published, nothing may bring it back. */
  readonly pause = (): void => {
    this.isPaused = true;
    clearTimeout(this.timer);
  };

  readonly resume = (): void => {
    this.start();
    if (this.firstChangeMs !== null) this.schedule();
  };

  /** This browser kept something that the server did not get; another page may have been there since. */
  readonly found = (left: DraftChange, initial: RecipeDraft | null): void => {
    this.firstChangeMs = Date.now();
    this.baseRev = left.baseRev;
    if (left.lockVersion === (initial?.lockVersion ?? 0)) this.changed();
    else this.tell(initial === null ? { kind: "gone" } : { kind: "stale", newer: initial });
  };

  /** Something that was asked for did not happen, in words. */
  readonly refuse = (why: string): void => {
    this.tell({ kind: "refused", why });
    this.resume();
  };

  /** The revision that the draft goes on top of. */
  readonly isOn = (): number | null => this.baseRev;

  readonly start = (): void => {
    this.isPaused = false;
  };

  readonly stop = (): void => {
    this.hurry();
    this.pause();
  };

  private isHeldUp(): boolean {
    return this.status.kind === "stale" || this.status.kind === "gone";
  }

  private change(): DraftChange {
    const { baseRev, lockVersion } = this;
    return { id: this.input.id, baseRev, lockVersion, ...this.input.content() };
  }

  private schedule(): void {
    if (this.isSending) return;
    clearTimeout(this.timer);
    const waited = Date.now() - (this.firstChangeMs ?? Date.now());
    const retry = RETRY_MS[Math.min(this.failures, RETRY_MS.length) - 1] ?? 0;
    const wait = this.failures > 0 ? retry : Math.max(0, Math.min(PAUSE_MS, LONGEST_WAIT_MS - waited));
    this.timer = setTimeout(() => void this.sendNow(), wait);
  }

  private async sendNow(): Promise<void> {
    if (this.isSending) return;
    this.isSending = true;
    this.keepLocally();
    const sinceMs = this.firstChangeMs;
    this.firstChangeMs = null;
    const outcome = await this.attempt();
    this.isSending = false;
    this.settle(outcome, sinceMs);
  }

  private async attempt(): Promise<ActionResult<DraftOutcome> | null> {
    try {
      return await this.input.send(this.change());
    } catch {
      return null;
    }
  }

  private settle(outcome: ActionResult<DraftOutcome> | null, sinceMs: number | null): void {
    const notYet = (status: KeepStatus): void => {
      this.firstChangeMs ??= sinceMs ?? Date.now();
      this.tell(status);
    };
    if (outcome === null) {
      this.failures++;
      notYet({ kind: "retrying" });
    } else if (outcome.status !== "ok") {
      this.failures++;
      const why = outcome.status === "refused" ? outcome.message : Object.values(outcome.fieldErrors).join(". ");
      notYet({ kind: "refused", why });
    } else if (outcome.data.ok) {
      this.kept(outcome.data);
    } else if (outcome.data.reason === "gone") {
      notYet({ kind: "gone" });
    } else if (outcome.data.newer.kept.writer === this.input.content().kept.writer) {
      // An answer got lost on its way: what the server has is from here.
      this.lockVersion = outcome.data.newer.lockVersion;
      notYet({ kind: "saving" });
    } else {
      notYet({ kind: "stale", newer: outcome.data.newer });
    }
    if (this.firstChangeMs !== null && !this.isPaused && !this.isHeldUp()) this.schedule();
  }

  private kept({ lockVersion, savedAt }: { readonly lockVersion: number; readonly savedAt: Date }): void {
    const { id } = this.input;
    const { kept } = this.input.content();
    this.failures = 0;
    this.lockVersion = lockVersion;
    this.input.remember({ id, baseRev: this.baseRev, lockVersion, begunAt: savedAt, savedAt, kept });
    if (this.firstChangeMs !== null) {
      this.keepLocally();
      return;
    }
    this.input.local.clear(this.input.id);
    this.tell({ kind: "saved", at: savedAt });
  }

  private tell(status: KeepStatus): void {
    this.status = status;
    for (const listener of this.listeners) listener();
  }
}
