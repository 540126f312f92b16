import { describe, expect, it } from "vitest";
import { layOut } from "../../src/export/layout.ts";
import { reportBytes } from "../../src/export/report.ts";
import { make } from "../../src/project/make.ts";
import { choicesOf } from "../support/choices.ts";

describe("the report", () => {
  it("is the JSON that anyone would write of it: no space, no number past six decimals", () => {
    const body = { id: 'Zoë "Z" Böhm', measures: { height: 1684, chest: 934 } };
    const made = make(body, choicesOf(), null);
    const text = new TextDecoder().decode(reportBytes(made, layOut(made.garment.pieces, "a4")));
    expect(`${JSON.stringify(JSON.parse(text))}\n`).toBe(text);
    expect(JSON.parse(text).body.id).toBe(body.id);
    expect(text.match(/\.\d{7,}/)).toBeNull();
  });
});
