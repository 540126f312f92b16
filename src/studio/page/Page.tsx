import type { JSX } from "react";
import { Alterations } from "../chapters/Alterations.tsx";
import { Block } from "../chapters/Block.tsx";
import { Cloth } from "../chapters/Cloth.tsx";
import type { Chapter } from "../chapters/chapters.ts";
import { Making } from "../chapters/Making.tsx";
import { Measures } from "../chapters/Measures.tsx";
import { Paper } from "../chapters/Paper.tsx";
import { Ribs } from "../chapters/Ribs.tsx";
import { Turnings } from "../chapters/Turnings.tsx";
import { PageFoot } from "../shell/Foot.tsx";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { Heading } from "./Heading.tsx";

const CHAPTER_PAGES: Readonly<Record<Chapter, () => JSX.Element>> = {
  measures: Measures,
  cloth: Cloth,
  block: Block,
  alterations: Alterations,
  ribs: Ribs,
  turnings: Turnings,
  paper: Paper,
  making: Making,
};

/** The open chapter as a page of sentences. */
export function Page() {
  const say = useSay();
  const chapter = useStudio((s) => s.chapter);
  const Sentences = CHAPTER_PAGES[chapter];
  return (
    <main className="page" id="page" aria-label={say(`chapter.${chapter}`)} data-region>
      <div key={chapter} className="turned">
        <Heading chapter={chapter} />
        <Sentences />
        <PageFoot />
      </div>
    </main>
  );
}
