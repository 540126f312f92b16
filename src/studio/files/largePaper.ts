import { create } from "zustand";
import { copyShopFaults } from "../../export/copyShop.ts";
import { PAPER_NAMES, type PaperName } from "../../export/data/paper.ts";

/** What a copy shop's plotter takes; the tiled sheets keep their own paper. */
export const LARGE_PAPERS: readonly PaperName[] = PAPER_NAMES.filter(
  (name) => copyShopFaults(name).length === 0,
);

/** The commonest roll. Common practice, no source. */
const FIRST: PaperName = "roll-914";

const useChosen = create<{ readonly paper: PaperName }>()(() => ({ paper: FIRST }));
export const useLarge = (): PaperName => useChosen(({ paper }) => paper);
export const largeNow = (): PaperName => useChosen.getState().paper;
export const chooseLarge = (name: string): void =>
  useChosen.setState({ paper: LARGE_PAPERS.find((one) => one === name) ?? FIRST });
