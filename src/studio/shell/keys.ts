import { isTeaching } from "../classroom/teaching.ts";
import { saveCopy } from "../files/saving.ts";
import { isBringing } from "../ownBlock/bringing.ts";
import { redo, turnBody, undo } from "../state/changes.ts";
import { goTo, goToNumber } from "../state/going.ts";
import { put, studio } from "../state/store.ts";
import { fitTable, moveTable, zoomTable } from "../state/viewing.ts";
import { CLOSER } from "../table/view.ts";

const STEP = 40;

/** The next of some elements after the one that has the focus; round from last to first. */
const focusNext = (selector: string, back: boolean): void => {
  const all = [...document.querySelectorAll<HTMLElement | SVGElement>(selector)];
  const at = all.findIndex((element) => element.contains(document.activeElement));
  const step = back ? -1 : 1;
  const next = at < 0 ? (back ? all.length - 1 : 0) : (at + step + all.length) % all.length;
  all[next]?.focus();
};

const REGION =
  "[data-region] :is(button, input, select, [tabindex='0']):not([disabled]):not([hidden])";

/** F6: the first thing that takes the focus in the next region. */
export const nextRegion = (back: boolean): void => {
  const regions = [...document.querySelectorAll("[data-region]")].filter((region) =>
    region.querySelector(REGION.replace("[data-region] ", "")),
  );
  const at = regions.findIndex((region) => region.contains(document.activeElement));
  const next = regions[(at + (back ? -1 : 1) + regions.length) % regions.length];
  next?.querySelector<HTMLElement | SVGElement>(REGION.replace("[data-region] ", ""))?.focus();
};

const tableMiddle = (): { x: number; y: number } => {
  const box = document.querySelector(".table")?.getBoundingClientRect();
  return { x: (box?.width ?? 0) / 2, y: (box?.height ?? 0) / 2 };
};

const zoomBy = (by: number): void => {
  const { x, y } = tableMiddle();
  zoomTable(by, x, y);
};

type Press = (event: KeyboardEvent) => void;

/** Single keys work only while the table has the focus (WCAG 2.1.4). */
const TABLE_KEYS: Readonly<Record<string, Press>> = {
  "0": fitTable,
  "+": () => zoomBy(CLOSER),
  "=": () => zoomBy(CLOSER),
  "-": () => zoomBy(1 / CLOSER),
  ArrowLeft: () => moveTable(STEP, 0),
  ArrowRight: () => moveTable(-STEP, 0),
  ArrowUp: () => moveTable(0, STEP),
  ArrowDown: () => moveTable(0, -STEP),
  p: () => focusNext("[data-piece]", false),
  P: () => focusNext("[data-piece]", true),
  n: () => focusNext("[data-pin]", false),
  N: () => focusNext("[data-pin]", true),
  o: () => put({ oldLines: !studio().oldLines }),
  m: () => put({ measuring: !studio().measuring }),
  t: () => put({ readingFacts: !studio().readingFacts }),
  "[": () => put({ pageFolded: !studio().pageFolded }),
  "?": () => put({ keysShown: true }),
};

const CTRL_KEYS: Readonly<Record<string, Press>> = {
  z: (event) => (event.shiftKey ? redo() : undo()),
  Z: redo,
  y: redo,
  s: saveCopy,
  p: () => goTo("paper"),
};

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement ||
  target instanceof HTMLTextAreaElement ||
  target instanceof HTMLSelectElement;

/** Undo belongs to what is typed while it is typed, where that is a text and no number. */
const isWriting = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement ||
  (target instanceof HTMLInputElement && target.getAttribute("role") !== "spinbutton");

const pressOf = (event: KeyboardEvent): Press | undefined => {
  const { key, target } = event;
  if (event.ctrlKey || event.metaKey) {
    return isWriting(target) && key.toLowerCase() === "z" ? undefined : CTRL_KEYS[key];
  }
  if (event.altKey) {
    if (key === "ArrowLeft") return () => turnBody(-1);
    return key === "ArrowRight" ? () => turnBody(1) : undefined;
  }
  if (key === "F6") return () => nextRegion(event.shiftKey);
  const onTable = target instanceof Element && target.closest(".table") !== null;
  if (!onTable || isTyping(target)) return undefined;
  if (/^[1-8]$/u.test(key)) return () => goToNumber(Number(key));
  return TABLE_KEYS[key];
};

export const startKeys = (): void => {
  addEventListener("keydown", (event) => {
    if (event.defaultPrevented || studio().atDoors || isTeaching() || isBringing()) return;
    const press = pressOf(event);
    if (!press) return;
    event.preventDefault();
    press(event);
  });
};
