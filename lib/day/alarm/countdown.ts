const SECOND_MS = 1000;

/** The time left as a clock shows it: "12:05", "1:02:03", and "−0:30" once it is over. */
export function countdown(ms: number): string {
  const seconds = Math.abs(ms < 0 ? Math.floor(ms / SECOND_MS) : Math.ceil(ms / SECOND_MS));
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor((seconds % 3600) / 60);
  const two = (part: number): string => String(part).padStart(2, "0");
  const text =
    hours > 0 ? `${String(hours)}:${two(minutes)}:${two(seconds % 60)}` : `${String(minutes)}:${two(seconds % 60)}`;
  return ms < 0 ? `−${text}` : text;
}

/** The same to be read aloud, to the minute until the last one. */
export function spokenCountdown(ms: number): string {
  const minutes = Math.floor(Math.abs(ms) / 60_000);
  const hours = Math.floor(minutes / 60);
  const said = [
    hours === 0 ? "" : `${String(hours)} ${hours === 1 ? "hour" : "hours"}`,
    `${String(minutes % 60)} ${minutes % 60 === 1 ? "minute" : "minutes"}`,
  ];
  return `${said.filter((part) => part !== "").join(" ")} ${ms < 0 ? "over" : "left"}`;
}
