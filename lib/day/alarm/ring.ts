const TONE_HZ = [880, 660] as const;
const TONE_S = 0.22;
const EVERY_MS = 1600;
const PULSES = [300, 150, 300, 150, 600];

/** What rings on this device. */
export interface Bell {
  /** Lets sound through: a browser plays none before somebody has touched the page. */
  readonly unlock: () => Promise<boolean>;
  readonly start: () => void;
  readonly stop: () => void;
}

/** Sound and vibration, repeated until they are stopped. */
export function createBell(): Bell {
  let context: AudioContext | null = null;
  let timer: ReturnType<typeof setInterval> | null = null;

  function strike(): void {
    if ("vibrate" in navigator) navigator.vibrate(PULSES);
    if (context?.state !== "running") return;
    const { currentTime } = context;
    TONE_HZ.forEach((hz, i) => tone(context, hz, currentTime + i * (TONE_S + 0.04)));
  }

  return {
    async unlock() {
      if (typeof AudioContext === "undefined") return false;
      context ??= new AudioContext();
      await context.resume();
      return context.state === "running";
    },
    start() {
      if (timer !== null) return;
      strike();
      timer = setInterval(strike, EVERY_MS);
    },
    stop() {
      if (timer === null) return;
      clearInterval(timer);
      timer = null;
      if ("vibrate" in navigator) navigator.vibrate(0);
    },
  };
}

function tone(context: AudioContext | null, hz: number, at: number): void {
  if (context === null) return;
  const oscillator = new OscillatorNode(context, { type: "square", frequency: hz });
  const gain = new GainNode(context, { gain: 0 });
  // A ramp in and out, for a tone that is cut off clicks.
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(0.4, at + 0.02);
  gain.gain.setValueAtTime(0.4, at + TONE_S - 0.03);
  gain.gain.linearRampToValueAtTime(0, at + TONE_S);
  oscillator.connect(gain).connect(context.destination);
  oscillator.start(at);
  oscillator.stop(at + TONE_S);
}
