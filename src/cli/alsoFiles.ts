import { copyShopFaults, copyShopPdf, copyShopSheets } from "../export/copyShop.ts";
import { isPaperChoice, type PaperChoice } from "../export/paperSize.ts";
import type { PdfOptions } from "../export/pdf.ts";
import { projectorPdf, projectorSheets } from "../export/projector.ts";
import type { SheetSubject } from "../export/subject.ts";
import { PAPERS_KNOWN } from "../project/printSchema.ts";
import { sentence } from "../project/refusal.ts";
import type { Files } from "./writeWhole.ts";

/** What is wanted beside the tiled sheets. */
export type Also = { readonly copyShop: PaperChoice | null; readonly projector: boolean };

/** What beside the sheets is asked for, or one sentence about what is wrong with it. */
export const alsoWanted = (
  options: ReadonlyMap<string, string>,
): Also | { readonly sentence: string } => {
  const paper = options.get("copy-shop") ?? null;
  const projector = options.has("projector");
  if (paper === null) return { copyShop: null, projector };
  if (!isPaperChoice(paper))
    return { sentence: `--copy-shop is ${paper}; it must be one of ${PAPERS_KNOWN}.` };
  const [fault] = copyShopFaults(paper);
  return fault ? { sentence: sentence(fault) } : { copyShop: paper, projector };
};

/** The files beside the sheets. */
export const alsoFiles = async (
  { copyShop, projector }: Also,
  subject: SheetSubject,
  options: PdfOptions,
): Promise<Files> => {
  const { pieces } = subject.garment;
  const large =
    copyShop === null
      ? {}
      : {
          "copy-shop.pdf": await copyShopPdf(subject, copyShopSheets(pieces, copyShop), options),
        };
  const thrown = projector
    ? { "projector.pdf": await projectorPdf(subject, projectorSheets(pieces), options) }
    : {};
  return { ...large, ...thrown };
};
