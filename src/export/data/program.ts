/** What stands in every file that leaves the program. The version is that of package.json. */
export const PROGRAM = { name: "ribwright", version: "0.1.0" } as const;
