/** Repeatable noise: the same seed gives the same demo on every machine. */
export class Noise {
  private state: number;

  constructor(seed: number) {
    this.state = seed;
  }

  /** Uniform in (0, 1): a linear congruential generator (Numerical Recipes constants). */
  uniform(): number {
    this.state = (this.state * 1664525 + 1013904223) % 4294967296;
    return (this.state + 0.5) / 4294967296;
  }

  /** Normal deviate with mean 0 and standard deviation 1 (Box–Muller). */
  normal(): number {
    return Math.sqrt(-2 * Math.log(this.uniform())) * Math.cos(2 * Math.PI * this.uniform());
  }

  /** A UUID of version 4 made of the noise. */
  uuid(): string {
    const hex = Array.from({ length: 32 }, () => Math.floor(this.uniform() * 16).toString(16)).join("");
    const variant = "89ab".charAt(Math.floor(this.uniform() * 4));
    return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-4${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
  }
}
