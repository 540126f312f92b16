import { writeProject } from "../../project/writeProject.ts";
import { bodyName } from "../state/changes.ts";
import { tell } from "../state/going.ts";
import { work } from "../state/store.ts";
import { say } from "../words/say.ts";
import { download, fileName } from "./download.ts";

/** The work as one file, to be kept where the patterns are kept. */
export const saveCopy = (): void => {
  const now = work();
  const name = fileName(now.title === "" ? bodyName(now) : now.title, ".ribwright.json");
  download(name, writeProject(now), "application/json");
  tell(say("file.saved", { file: name }));
};
