import { create } from "zustand";
import type { HomePaper } from "../../export/printPage.ts";
import type { Work } from "../../project/work.ts";
import { useStudio } from "../state/store.ts";
import { homePaper } from "./exportJob.ts";

/** What guide and handouts are printed on, where the maker chose; else the pattern's own paper or A4. */
const useChosen = create<{ readonly paper: HomePaper | null }>()(() => ({ paper: null }));

export const chooseHome = (paper: HomePaper): void => useChosen.setState({ paper });
export const homeNow = (work: Work): HomePaper =>
  useChosen.getState().paper ?? homePaper(work.paper);
export const useHome = (): HomePaper => {
  const paper = useStudio((s) => s.history.present.paper);
  return useChosen((s) => s.paper) ?? homePaper(paper);
};
