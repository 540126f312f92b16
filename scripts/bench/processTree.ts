import { readdirSync, readFileSync } from "node:fs";

const KB = 1024;

/** Parent and resident memory of one process, or null where it has ended meanwhile. */
const look = (pid: number): { readonly parent: number; readonly bytes: number } | null => {
  try {
    const status = readFileSync(`/proc/${pid}/status`, "utf8");
    const number = (name: string): number =>
      Number(new RegExp(`^${name}:\\s+(\\d+)`, "m").exec(status)?.[1] ?? 0);
    return { parent: number("PPid"), bytes: number("VmRSS") * KB };
  } catch {
    return null;
  }
};

/** Resident memory of a process and all that it started, in bytes. Linux only. */
export const treeBytes = (root: number): number => {
  const all = readdirSync("/proc")
    .map(Number)
    .filter((pid) => pid > 0)
    .flatMap((pid) => {
      const seen = look(pid);
      return seen ? [{ pid, ...seen }] : [];
    });
  const inTree = new Set([root]);
  let before = 0;
  while (inTree.size > before) {
    before = inTree.size;
    for (const { pid, parent } of all) if (inTree.has(parent)) inTree.add(pid);
  }
  return all.filter(({ pid }) => inTree.has(pid)).reduce((sum, { bytes }) => sum + bytes, 0);
};
