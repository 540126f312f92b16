import { faulty, type Told } from "../told.ts";

/** A picture's file that ends before it says that it does. */
export const cutOffFile = (length: number): Told<never> =>
  faulty(
    "picture",
    `${length} bytes`,
    `The picture file ends early, after ${length} bytes: its last part is missing.`,
    "Copy the picture again from the camera, or save it anew.",
  );
