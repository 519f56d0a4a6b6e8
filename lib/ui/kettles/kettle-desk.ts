import type { Recipe } from "@/lib/calc/ledger";
import { adaptWith, type AdaptationChoice } from "@/lib/model/adaptation";
import type { KettleToAdapt } from "@/lib/model/kettle-entry";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { recipeIntention, type WrittenIntention } from "@/lib/model/recipe-intention";
import type { ExplainableNumber, ExplainedCell, FitDetail, FromDesk, ToDesk } from "./desk-messages";
import { explainCell } from "./explain-cell";
import { kettleFigures, toldWay, withIntervals, type KettleFigures, type KettleTask } from "./kettle-figures";
import { KettleQueue } from "./kettle-queue";
import { choiceInView, type VolumeView } from "./kettle-view";

/** How long rows are computed in one go, ms: a click is answered in between. */
const SLICE_MS = 24;

/** What surrounds the desk: a worker in a browser, a list in a test. */
export interface DeskRoom {
  readonly post: (message: FromDesk) => void;
  /** Runs a task soon, after the messages that wait. */
  readonly soon: (task: () => void) => void;
  readonly now: () => number;
}

interface HalfDone {
  readonly figures: KettleFigures;
  readonly recipe: Recipe | null;
}

/** Computes the rows of the table in slices, and answers questions about one of them. It runs away from the page. */
export class KettleDesk {
  private content: RecipeContent | null = null;
  private written: WrittenIntention | null = null;
  private volume: VolumeView = "chosen";
  private run = 0;
  private readonly kettles = new Map<string, KettleToAdapt>();
  private readonly kept = new Map<string, AdaptationChoice>();
  private readonly done = new Set<string>();
  private readonly halfDone = new Map<string, HalfDone>();
  private queue = new KettleQueue();
  private isAtWork = false;

  constructor(private readonly room: DeskRoom) {}

  receive(message: ToDesk): void {
    switch (message.kind) {
      case "open":
        this.open(message);
        break;
      case "kettles":
        for (const line of message.lines) this.add(JSON.parse(line) as KettleToAdapt);
        break;
      case "look":
        this.queue.look(message.ids);
        break;
      case "volume":
        this.volume = message.volume;
        this.run = message.run;
        this.queueAll();
        break;
      case "keep":
        this.kept.set(message.id, message.choice);
        if (this.kettles.has(message.id)) this.queue.add(message.id);
        break;
      case "explain": {
        const { request, id, number } = message;
        this.room.post({ kind: "explained", request, cell: this.explain(id, number) });
        break;
      }
      case "detail": {
        const { request, id } = message;
        this.room.post({ kind: "detail", request, detail: this.detail(id) });
        break;
      }
    }
    this.work();
  }

  private open({ run, content, volume, kept, done }: Extract<ToDesk, { kind: "open" }>): void {
    this.content = content;
    this.written = recipeIntention(content);
    this.run = run;
    this.volume = volume;
    for (const [id, choice] of kept) this.kept.set(id, choice);
    for (const id of done) this.done.add(id);
  }

  private add(kettle: KettleToAdapt): void {
    this.kettles.set(kettle.id, kettle);
    if (!this.done.has(kettle.id)) this.queue.add(kettle.id);
  }

  private queueAll(): void {
    this.queue = new KettleQueue();
    this.halfDone.clear();
    this.done.clear();
    for (const id of this.kettles.keys()) this.queue.add(id);
  }

  private work(): void {
    if (this.isAtWork || this.queue.isEmpty) return;
    this.isAtWork = true;
    this.room.soon(() => {
      this.isAtWork = false;
      this.slice();
      this.work();
    });
  }

  private slice(): void {
    const end = this.room.now() + SLICE_MS;
    const rows: [string, KettleFigures][] = [];
    do {
      const job = this.queue.take();
      if (job === null) break;
      const figures = job.part === "figures" ? this.begin(job.id) : this.finish(job.id);
      if (figures !== null) rows.push([job.id, figures]);
    } while (this.room.now() < end);
    if (rows.length > 0) this.room.post({ kind: "figures", run: this.run, rows });
  }

  private begin(id: string): KettleFigures | null {
    const task = this.taskFor(id);
    if (task === null) return null;
    const { figures, brew } = kettleFigures(task);
    this.halfDone.set(id, { figures, recipe: brew?.recipe ?? null });
    return figures;
  }

  private finish(id: string): KettleFigures | null {
    const half = this.halfDone.get(id);
    const task = this.taskFor(id);
    if (half === undefined || task === null) return null;
    this.halfDone.delete(id);
    return withIntervals(half.figures, { ...task, recipe: half.recipe });
  }

  private taskFor(id: string): KettleTask | null {
    const { content, written } = this;
    const kettle = this.kettles.get(id);
    if (content === null || written === null || kettle === undefined) return null;
    return { content, written, kettle, choice: choiceInView(this.kept.get(id) ?? null, this.volume) };
  }

  private explain(id: string, number: ExplainableNumber): ExplainedCell | null {
    const task = this.taskFor(id);
    return task === null ? null : explainCell(task, number);
  }

  private detail(id: string): FitDetail | null {
    const task = this.taskFor(id);
    if (task === null) return null;
    const { kettle, ...rest } = task;
    const { outcome } = adaptWith({ ...rest, equipment: kettle.equipment, lots: new Map(kettle.lots) });
    return {
      limits: outcome.ledger?.limits ?? [],
      fits: outcome.ok,
      ways: outcome.ok ? [] : outcome.waysOut.map(toldWay),
    };
  }
}
