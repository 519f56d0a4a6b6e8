import type { Step } from "@/lib/calc/runsheet";
import { ClockTime } from "@/lib/ui/brew/clock-time";

const MINUTE_MS = 60_000;

interface StepTimeProps {
  readonly step: Step;
  readonly startedAt: Date | null;
}

/** When a step begins: by the clock once the day has started, and always counted from its start. */
export function StepTime({ step, startedAt }: StepTimeProps) {
  const begin = Math.round(step.startMin);
  const lasting = Math.round(step.startMin + step.minutes) - begin;
  return (
    <p className="flex flex-wrap items-baseline gap-x-3 leading-tight sm:block">
      {startedAt === null ? null : (
        <span className="block text-lg font-semibold">
          <ClockTime at={new Date(startedAt.getTime() + begin * MINUTE_MS)} />
        </span>
      )}
      <span className={startedAt === null ? "block text-lg font-semibold" : "block text-muted"}>
        <span aria-hidden>+{offset(begin)}</span>
        <span className="sr-only">{spokenOffset(begin)}</span>
      </span>
      {lasting > 0 ? <span className="block text-muted">for {lasting} min</span> : null}
    </p>
  );
}

function offset(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

function spokenOffset(minutes: number): string {
  return `${Math.floor(minutes / 60)} hours ${minutes % 60} minutes after the start`;
}
