import { useEffect, useRef } from "react";
import type { Chapter } from "../chapters/chapters.ts";
import { useSay } from "../words/say.ts";

/** The chapter's name and what it is for. A chapter that is turned to begins here. */
export function Heading({ chapter }: { readonly chapter: Chapter }) {
  const say = useSay();
  const head = useRef<HTMLHeadingElement>(null);
  const first = useRef(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another chapter is the reason to scroll
  useEffect(() => {
    if (!first.current) head.current?.closest(".page")?.scrollTo(0, 0);
    first.current = false;
  }, [chapter]);
  return (
    <>
      <h1 ref={head}>{say(`chapter.${chapter}`)}</h1>
      <p className="lead">{say(`lead.${chapter}`)}</p>
    </>
  );
}
