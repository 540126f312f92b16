/** What is followed: the middle of a dark line on light paper, or the edge between two greys. */
export type Followed = "line" | "edge";
