/** Browsers carry longer addresses than this, but chats and letters cut them. */
export const LONGEST_LINK = 8000;

const throughStream = async (bytes: Uint8Array<ArrayBuffer>, stream: GenericTransformStream) =>
  new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(stream)).arrayBuffer());

/** The alphabet of addresses: RFC 4648, section 5, without padding. */
const toLetters = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))
    .replace(/\+/gu, "-")
    .replace(/\//gu, "_")
    .replace(/=+$/u, "");

const fromLetters = (letters: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(letters.replace(/-/gu, "+").replace(/_/gu, "/")), (c) => c.charCodeAt(0));

/** A text as letters that an address may carry: deflated by the browser itself. */
export const packed = async (text: string): Promise<string> =>
  toLetters(
    await throughStream(new TextEncoder().encode(text), new CompressionStream("deflate-raw")),
  );

/** The text again; throws where the letters were cut short or changed. */
export const unpacked = async (letters: string): Promise<string> =>
  new TextDecoder("utf-8", { fatal: true }).decode(
    await throughStream(fromLetters(letters), new DecompressionStream("deflate-raw")),
  );
