import type { WorkedCheck } from "../workedChecks.ts";

/** What the project's code makes of a worked check: numbers in the order of what is expected. */
export type Run = (check: WorkedCheck) => readonly number[];
/** By the id of the check. */
export type Runs = Readonly<Record<string, Run>>;
