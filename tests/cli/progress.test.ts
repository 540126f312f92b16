import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { progressOn } from "../../src/cli/progress.ts";

const spoken = (isWatched: boolean) => {
  const lines: string[] = [];
  const voice = {
    out: () => {
      throw new Error("progress is no result");
    },
    err: (text: string) => {
      lines.push(text);
    },
    isWatched,
  };
  return { voice, lines };
};

describe("the line that counts up", () => {
  beforeEach(() => {
    vi.useFakeTimers({ now: 1_000 });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test("is written over and over, at most ten times a second, and is gone at the end", () => {
    const { voice, lines } = spoken(true);
    const progress = progressOn(voice, 40, "bodies");
    progress.at(1);
    progress.at(2);
    vi.advanceTimersByTime(100);
    progress.at(3);
    progress.end();
    expect(lines).toEqual(["\r\u001b[K1 of 40 bodies", "\r\u001b[K3 of 40 bodies", "\r\u001b[K"]);
  });

  test("is not written where nobody watches", () => {
    const { voice, lines } = spoken(false);
    const progress = progressOn(voice, 40, "bodies");
    progress.at(1);
    progress.end();
    expect(lines).toEqual([]);
  });
});
