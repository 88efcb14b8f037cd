import type { IncomingMessage } from "node:http";

/** More than any workbook that the page can show. */
const MOST_MEGABYTES = 100;
const MEGABYTE = 1024 * 1024;

/** A request that is answered with a sentence and a status that says whose fault it is. */
export class NotTaken extends Error {
  override name = "NotTaken";
  constructor(
    readonly status: number,
    why: string,
  ) {
    super(why);
  }
}

/**
 * What is sent here comes from our own page: a browser says of every sending from which page it comes, and nobody's page
 * can say otherwise.
 */
export function mustBeFromOurPage({ headers }: IncomingMessage): void {
  const { origin, host } = headers;
  if (origin !== `http://${host}`)
    throw new NotTaken(403, `This page takes nothing from ${origin ?? "a sender who does not name himself"}`);
}

/** All that is sent with a request. */
export async function bytesOf(request: IncomingMessage): Promise<Buffer> {
  const pieces: Buffer[] = [];
  let size = 0;
  for await (const piece of request as AsyncIterable<Buffer>) {
    size += piece.length;
    // What comes after it is read and thrown away, so that the answer is heard.
    if (size <= MOST_MEGABYTES * MEGABYTE) pieces.push(piece);
  }
  if (size > MOST_MEGABYTES * MEGABYTE)
    throw new NotTaken(
      413,
      `The workbook is ${Math.ceil(size / MEGABYTE)} MB large; up to ${MOST_MEGABYTES} MB are opened here.`,
    );
  return Buffer.concat(pieces);
}
