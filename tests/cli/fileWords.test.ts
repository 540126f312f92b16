import { describe, expect, test } from "vitest";
import { endsRun, faultOfReading, faultOfWriting } from "../../src/cli/fileWords.ts";

/** What Node throws when the system refuses a call; who runs the tests may be refused nothing. */
const refusedBy = (code: string): Error =>
  Object.assign(new Error(`${code}: as the system says it`), { code, syscall: "open" });

describe("what the system refuses", () => {
  test.each([
    ["EACCES", "may not be opened by you.", "Ask for the rights"],
    ["EPERM", "may not be changed by you.", "Ask for the rights"],
    ["EROFS", "lies on a disk that can only be read.", "Take another place."],
    ["EIO", "the disk fails", "Take another disk."],
  ])("%s is told as a file's name, what is wrong and what to do", (code, reason, cure) => {
    const fault = faultOfReading(refusedBy(code), "choir.csv");
    expect(fault.reason).toContain("choir.csv");
    expect(fault.reason).toContain(reason);
    expect(fault.do).toContain(cure);
    expect(fault.reason).not.toContain(code);
  });

  test("a file that is not there is told apart from a folder that cannot be made", () => {
    expect(faultOfReading(refusedBy("ENOENT"), "a.csv").reason).toContain("is not there");
    expect(faultOfWriting(refusedBy("ENOENT"), "out").reason).toContain("cannot be made there");
  });

  test("a refusal that has no words yet still names the file and the system's code", () => {
    expect(faultOfWriting(refusedBy("EODD"), "out").reason).toMatch(/out.*EODD/u);
  });

  test("a disk that is full or fails ends a run; a file without rights does not", () => {
    expect(endsRun(refusedBy("ENOSPC"))).toBe(true);
    expect(endsRun(refusedBy("EIO"))).toBe(true);
    expect(endsRun(refusedBy("EACCES"))).toBe(false);
  });

  test("a mistake of our own is thrown on and never told as a file's fault", () => {
    const ours = new TypeError("not a call to the system");
    expect(() => faultOfReading(ours, "a.csv")).toThrow(ours);
  });
});
