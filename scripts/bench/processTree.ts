import { readdirSync, readFileSync } from "node:fs";

const KB = 1024;
/** Linux counts processor time in hundredths of a second. */
const TICKS = 100;
/** Fields of /proc/PID/stat after the name: parent, then user and system time (man 5 proc). */
const PARENT = 1;
const USER_TIME = 11;
const SYSTEM_TIME = 12;
const RESIDENT = 21;
const PAGE = 4 * KB;

/** What a process and all that it started take: memory now, processor time so far. Linux only. */
export type Taken = { readonly bytes: number; readonly seconds: number };

type Seen = Taken & { readonly pid: number; readonly parent: number };

/** One process, or null where it has ended meanwhile. */
const look = (pid: number): Seen | null => {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    // The name may hold blanks and brackets; what is counted comes after its last bracket.
    const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
    const number = (field: number): number => Number(fields[field] ?? 0);
    return {
      pid,
      parent: number(PARENT),
      bytes: number(RESIDENT) * PAGE,
      seconds: (number(USER_TIME) + number(SYSTEM_TIME)) / TICKS,
    };
  } catch {
    return null;
  }
};

/** The processes of a tree, by their numbers. */
export const lookAtTree = (root: number): ReadonlyMap<number, Taken> => {
  const all = readdirSync("/proc")
    .map(Number)
    .filter((pid) => pid > 0)
    .flatMap((pid) => look(pid) ?? []);
  const inTree = new Set([root]);
  let before = 0;
  while (inTree.size > before) {
    before = inTree.size;
    for (const { pid, parent } of all) if (inTree.has(parent)) inTree.add(pid);
  }
  return new Map(all.filter(({ pid }) => inTree.has(pid)).map((seen) => [seen.pid, seen]));
};
