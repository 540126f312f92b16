import { execFileSync, spawn } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";

const inFolder = async <T>(use: (folder: string) => Promise<T>): Promise<T> => {
  const folder = mkdtempSync(join(tmpdir(), "printer-"));
  try {
    return await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
};

/** What CUPS sends a page through before any printer sees it (Debian: cups-filters). */
const CUPS_FILTER = "/usr/lib/cups/filter/pdftopdf";

/** A4 in points. */
const [WIDE, HIGH] = [595, 842];

/** A printer of A4 that leaves so much bare that what is fitted comes out at this scale. */
const printerOf = (scale: number): string => {
  const [x, y] = [(WIDE * (1 - scale)) / 2, (HIGH * (1 - scale)) / 2];
  const area = `${x} ${y} ${WIDE - x} ${HIGH - y}`;
  return [
    '*PPD-Adobe: "4.3"',
    '*FormatVersion: "4.3"',
    "*LanguageEncoding: ISOLatin1",
    "*LanguageVersion: English",
    '*PCFileName: "TEST.PPD"',
    '*Product: "(Test)"',
    '*Manufacturer: "Test"',
    '*ModelName: "Test"',
    '*ShortNickName: "Test"',
    '*NickName: "Test"',
    '*PSVersion: "(3010) 0"',
    "*ColorDevice: False",
    "*OpenUI *PageSize/Page: PickOne",
    "*DefaultPageSize: A4",
    '*PageSize A4/A4: ""',
    "*CloseUI: *PageSize",
    "*OpenUI *PageRegion/Page: PickOne",
    "*DefaultPageRegion: A4",
    '*PageRegion A4/A4: ""',
    "*CloseUI: *PageRegion",
    "*DefaultImageableArea: A4",
    `*ImageableArea A4/A4: "${area}"`,
    "*DefaultPaperDimension: A4",
    `*PaperDimension A4/A4: "${WIDE} ${HIGH}"`,
    "",
  ].join("\n");
};

/** Sends a file through CUPS with these options, to a printer whose fitting scales so. */
export const printedByCups = (
  pdf: Uint8Array,
  options: string,
  scale: number,
): Promise<Uint8Array> =>
  inFolder(async (folder) => {
    const [file, ppd] = [join(folder, "in.pdf"), join(folder, "printer.ppd")];
    writeFileSync(file, pdf);
    writeFileSync(ppd, printerOf(scale));
    return execFileSync(CUPS_FILTER, ["1", "maker", "pattern", "1", options, file], {
      env: { ...process.env, PPD: ppd },
      maxBuffer: 1 << 28,
      stdio: ["ignore", "pipe", "ignore"],
    });
  });

/** A screen that nobody sees: Chromium prints only where it has a window. */
const hiddenScreen = async (): Promise<{
  readonly display: string;
  readonly close: () => void;
}> => {
  const screen = spawn(
    "Xvfb",
    ["-displayfd", "1", "-screen", "0", "1024x768x24", "-nolisten", "tcp"],
    {
      stdio: ["ignore", "pipe", "ignore"],
    },
  );
  const number = await new Promise<string>((resolve, reject) => {
    screen.on("error", reject);
    screen.stdout.once("data", (data: Buffer) => resolve(data.toString().trim()));
  });
  return { display: `:${number}`, close: () => screen.kill() };
};

/** "Save as PDF", without asking: the printing of Chromium up to where a printer would take over. */
const PREFERENCES = (folder: string) => ({
  printing: {
    print_preview_sticky_settings: {
      appState: JSON.stringify({
        version: 2,
        recentDestinations: [{ id: "Save as PDF", origin: "local", account: "" }],
        selectedDestinationId: "Save as PDF",
      }),
    },
  },
  savefile: { default_directory: folder },
});

const servedAs = (pdf: Uint8Array) =>
  createServer((request, response) => {
    const isPdf = request.url === "/pattern.pdf";
    response.setHeader("content-type", isPdf ? "application/pdf" : "text/html");
    response.end(isPdf ? pdf : '<iframe src="/pattern.pdf" width="800" height="600"></iframe>');
  });

/** The first file in a folder that has an end to it, waited for. */
const fileIn = async (folder: string): Promise<Uint8Array> => {
  for (let tries = 0; tries < 200; tries++) {
    await new Promise((resolve) => setTimeout(resolve, 200));
    const [name] = existsSync(folder) ? readdirSync(folder).filter((n) => n.endsWith(".pdf")) : [];
    if (name === undefined) continue;
    const bytes = readFileSync(join(folder, name));
    if (bytes.subarray(-32).toString("latin1").includes("%%EOF")) return bytes;
  }
  throw new Error("Chromium printed nothing.");
};

/** Opens a PDF in Chromium's own viewer and prints it as a maker does, into a file. */
export const printedByChromium = (pdf: Uint8Array): Promise<Uint8Array> =>
  inFolder(async (folder) => {
    const [profile, out] = [join(folder, "profile"), join(folder, "out")];
    mkdirSync(join(profile, "Default"), { recursive: true });
    mkdirSync(out);
    writeFileSync(join(profile, "Default", "Preferences"), JSON.stringify(PREFERENCES(out)));
    const server = servedAs(pdf).listen(0, "127.0.0.1");
    const screen = await hiddenScreen();
    const context = await chromium.launchPersistentContext(profile, {
      executablePath: "/usr/bin/chromium",
      headless: false,
      env: { ...process.env, DISPLAY: screen.display },
      args: ["--kiosk-printing", "--no-sandbox", "--disable-gpu"],
      ignoreDefaultArgs: [
        "--disable-extensions",
        "--disable-component-extensions-with-background-pages",
      ],
    });
    try {
      const page = await context.newPage();
      const { port }: AddressInfo = addressOf(server.address());
      await page.goto(`http://127.0.0.1:${port}/`);
      await page.waitForFunction(() => document.readyState === "complete");
      // The viewer is an extension of its own: give it the time to open the file.
      await page.waitForTimeout(3000);
      await page.evaluate(() => document.querySelector("iframe")?.contentWindow?.print());
      return await fileIn(out);
    } finally {
      await context.close();
      screen.close();
      server.close();
    }
  });

const addressOf = (address: AddressInfo | string | null): AddressInfo => {
  if (address === null || typeof address === "string") throw new Error("no port");
  return address;
};
