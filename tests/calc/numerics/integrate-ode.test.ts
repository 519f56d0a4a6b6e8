import { describe, expect, it } from "vitest";
import { integrateOde, type OdeProblem, type Slopes } from "@/lib/calc/numerics";
import { expectWithin } from "../../support/expect-within";

const TIGHT = { relative: 1e-10, absolute: 1e-12 };

const decay: Slopes = (_t, [y = 0], out) => {
  out[0] = -y;
};

const oscillator: Slopes = (_t, [x = 0, v = 0], out) => {
  out[0] = v;
  out[1] = -x;
};

// Two bodies of equal mass with eccentricity 0.6: after one turn of 2π they are back where they were.
const ECCENTRICITY = 0.6;
const twoBodies: Slopes = (_t, [x = 0, y = 0, vx = 0, vy = 0], out) => {
  const cube = Math.hypot(x, y) ** 3;
  out[0] = vx;
  out[1] = vy;
  out[2] = -x / cube;
  out[3] = -y / cube;
};
const PERIHELION = [1 - ECCENTRICITY, 0, 0, Math.sqrt((1 + ECCENTRICITY) / (1 - ECCENTRICITY))];

function endOf(problem: OdeProblem): readonly number[] {
  const outcome = integrateOde(problem);
  expect(outcome.ok).toBe(true);
  return outcome.y;
}

describe("integrateOde", () => {
  it("follows y′ = −y to e⁻²⁰ (DETEST A1, closed form)", () => {
    const [y = NaN] = endOf({ slopes: decay, from: 0, to: 20, start: [1], relative: 1e-9, absolute: 0 });
    expectWithin(y / Math.exp(-20), 1, 1e-7);
  });

  it("follows y′ = −y³/2 to 1/√21 (DETEST A2, closed form)", () => {
    const slopes: Slopes = (_t, [y = 0], out) => {
      out[0] = -(y ** 3) / 2;
    };
    expectWithin(endOf({ slopes, from: 0, to: 20, start: [1], ...TIGHT })[0] ?? NaN, 1 / Math.sqrt(21), 1e-9);
  });

  it("follows y′ = y cos t to exp(sin 20) (DETEST A3, closed form)", () => {
    const slopes: Slopes = (t, [y = 0], out) => {
      out[0] = y * Math.cos(t);
    };
    expectWithin(endOf({ slopes, from: 0, to: 20, start: [1], ...TIGHT })[0] ?? NaN, Math.exp(Math.sin(20)), 1e-8);
  });

  it("follows the logistic y′ = y/4 (1 − y/20) (DETEST A4, closed form)", () => {
    const slopes: Slopes = (_t, [y = 0], out) => {
      out[0] = (y / 4) * (1 - y / 20);
    };
    expectWithin(
      endOf({ slopes, from: 0, to: 20, start: [1], ...TIGHT })[0] ?? NaN,
      20 / (1 + 19 * Math.exp(-5)),
      1e-8,
    );
  });

  it("closes an elliptic orbit of eccentricity 0.6 after one turn (DETEST D4 kind, Kepler's first law)", () => {
    const end = endOf({ slopes: twoBodies, from: 0, to: 2 * Math.PI, start: PERIHELION, ...TIGHT });
    PERIHELION.forEach((value, i) => expectWithin(end[i] ?? NaN, value, 1e-7));
  });

  it("errs a thousand times less when it may err a hundred thousand times less", () => {
    const error = (relative: number): number =>
      Math.abs(
        (endOf({ slopes: oscillator, from: 0, to: 10, start: [1, 0], relative, absolute: relative })[0] ?? 0) -
          Math.cos(10),
      );
    expect(error(1e-10)).toBeLessThan(error(1e-5) / 1000);
  });

  it("runs backwards to where it came from", () => {
    const there = endOf({ slopes: oscillator, from: 0, to: 3, start: [1, 0], ...TIGHT });
    const back = endOf({ slopes: oscillator, from: 3, to: 0, start: there, ...TIGHT });
    expectWithin(back[0] ?? NaN, 1, 1e-8);
    expectWithin(back[1] ?? NaN, 0, 1e-8);
  });

  it("ends where the event changes sign: a pendulum through its lowest point at π/2", () => {
    const outcome = integrateOde({
      slopes: oscillator,
      from: 0,
      to: 10,
      start: [1, 0],
      ...TIGHT,
      event: (_t, [x = 0]) => x,
    });
    expect(outcome).toMatchObject({ ok: true, ended: "at-event" });
    expectWithin(outcome.t, Math.PI / 2, 1e-8);
    expectWithin(outcome.y[0] ?? NaN, 0, 1e-8);
  });

  it("stays at the start of an empty span", () => {
    expect(integrateOde({ slopes: decay, from: 1, to: 1, start: [5], ...TIGHT })).toEqual({
      ok: true,
      ended: "at-end",
      t: 1,
      y: [5],
    });
  });

  it("stops short of a pole: y′ = y² runs to infinity at t = 1", () => {
    const slopes: Slopes = (_t, [y = 0], out) => {
      out[0] = y * y;
    };
    const outcome = integrateOde({ slopes, from: 0, to: 2, start: [1], ...TIGHT });
    expect(outcome.ok).toBe(false);
    expectWithin(outcome.t, 1, 1e-6);
  });

  it("refuses a start that is not a number and a tolerance past what doubles hold", () => {
    expect(() => integrateOde({ slopes: decay, from: 0, to: 1, start: [NaN], ...TIGHT })).toThrow(
      "start value NaN is outside",
    );
    expect(() => integrateOde({ slopes: decay, from: 0, to: 1, start: [1], relative: 1e-16, absolute: 0 })).toThrow(
      "relative tolerance 1e-16 is outside 1e-14 to 0.1",
    );
  });
});
