import { heldBody, type Work } from "../../project/work.ts";
import { writeProject } from "../../project/writeProject.ts";
import { change } from "../state/changes.ts";
import { tell } from "../state/going.ts";
import { put, work } from "../state/store.ts";
import { say } from "../words/say.ts";
import { LONGEST_LINK, packed, unpacked } from "./packing.ts";
import { read } from "./reading.ts";

/** The part of an address after "#" that carries a work: it never leaves the browser. */
const MARK = "#work=";

/** One body with its choices: what a link has room for. */
const small = (now: Work): Work => ({
  ...now,
  bodies: [heldBody(now)],
  held: 0,
  signed: {},
  sewn: {},
});

export const linkFor = async (now: Work, address: string): Promise<string | null> => {
  const link = `${address.split("#")[0]}${MARK}${await packed(writeProject(small(now), 0))}`;
  return link.length > LONGEST_LINK ? null : link;
};

const offer = async (): Promise<void> => {
  const link = await linkFor(work(), location.href);
  if (link === null) {
    tell(say("file.linkTooLong"), { urgent: true });
    return;
  }
  try {
    await navigator.clipboard.writeText(link);
    tell(say("file.linkCopied"), { link });
  } catch {
    tell(say("file.linkShown"), { link });
  }
};

export const copyLink = (): void => {
  offer().catch(() => tell(say("file.linkTooLong"), { urgent: true }));
};

/** Opens the work of the page's own address, if it carries one, and takes it out of the address. */
export const openLink = async (): Promise<void> => {
  const { hash } = location;
  if (!hash.startsWith(MARK)) return;
  history.replaceState(null, "", location.href.split("#")[0]);
  try {
    const found = await read("link", await unpacked(hash.slice(MARK.length)));
    if (!("work" in found)) throw new Error("no work");
    put({ atDoors: false });
    change(found.work, () => say("step.open", { file: "link" }));
    tell(say("file.linkOpened"));
  } catch {
    tell(say("file.linkBroken"), { urgent: true });
  }
};
