import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { ownBlock as de } from "../../src/studio/words/de/ownBlock.ts";
import { ownBlock as en } from "../../src/studio/words/en/ownBlock.ts";
import { slotsOf } from "../../src/studio/words/sentence.ts";

const isKey = (key: string): key is keyof typeof en => key in en;
const KEYS = Object.keys(en).filter(isKey);

describe("the words of the door for a block of one's own", () => {
  test.each(KEYS)("%s has the same slots in both languages", (key) => {
    expect([...slotsOf(de[key])].sort()).toEqual([...slotsOf(en[key])].sort());
  });

  test("are all said somewhere, and none blames", () => {
    const code = ["src/studio/ownBlock", "src/studio/photo"]
      .flatMap((folder) => readdirSync(folder).map((name) => `${folder}/${name}`))
      .map((file) => readFileSync(file, "utf8"))
      .join("\n");
    // A key may be put together: `own.way.${way}.text`; then its first part is found.
    const isSaid = (key: string): boolean =>
      code.includes(`"${key}"`) ||
      key
        .split(".")
        .some((_, i, parts) => i > 0 && code.includes(`\`${parts.slice(0, i).join(".")}.\${`));
    expect(KEYS.filter((key) => !isSaid(key))).toEqual([]);
    for (const key of KEYS) expect(en[key], key).not.toMatch(/!|\b(?:invalid|illegal|oops)\b/iu);
  });
});
