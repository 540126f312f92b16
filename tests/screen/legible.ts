import type { Page } from "@playwright/test";

/**
 * The least height of a capital that is read, 16 minutes of arc (ISO 9241-3, which prefers 20 to 22):
 * at 4 m 18.6 mm. A picture 2 m wide, common practice for a classroom, has 1280 px, 1.56 mm each.
 */
export const LEAST_CAPITAL = (4000 * Math.tan(((16 / 60) * Math.PI) / 180)) / (2000 / 1280);

/** What only the teacher reads, at the machine: the keys and the list of steps. */
const TEACHERS = ".classHead, .classFoot, .vh";

type Lettering = { readonly text: string; readonly capital: number };

/** Every text that the class reads, with how high its capitals are, in px. */
export const lettering = (page: Page): Promise<readonly Lettering[]> =>
  page.evaluate(`(() => {
    const canvas = document.createElement("canvas").getContext("2d");
    const walker = document.createTreeWalker(document.querySelector(".classRoom"), NodeFilter.SHOW_TEXT);
    const found = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (node.data.trim() === "" || parent.closest(${JSON.stringify(TEACHERS)})) continue;
      const style = getComputedStyle(parent);
      canvas.font = style.fontWeight + " " + style.fontSize + " " + style.fontFamily;
      found.push({ text: node.data, capital: canvas.measureText("H").actualBoundingBoxAscent });
    }
    return found;
  })()`);
