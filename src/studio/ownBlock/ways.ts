import type { Way } from "./ownBlock.ts";

/** The ways that stand open, in the order in which they are offered. */
export const WAYS: readonly Way[] = ["photo", "drawing", "tape"];
