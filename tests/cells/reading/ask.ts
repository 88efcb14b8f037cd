import { expect } from "vitest";
import type { Argument } from "../../../src/cells/read";
import { table } from "../../../src/cells/spread";

type Reader<T> = (range: unknown, name: string) => Argument<T>;

/** What a cell becomes under a reader, or its error. */
export function readOne<T>(reader: Reader<T>, cell: unknown): unknown {
  return table({ value: reader([[cell]], "size") } as never, ({ value }: { value: T }) => [[value as never]])[0]![0];
}

/** The message with which a reader refuses a cell. */
export function refused(reader: Reader<unknown>, cell: unknown): string {
  const answer = readOne(reader, cell) as { error: string; message: string };
  expect(answer).toMatchObject({ error: "#VALUE!" });
  expect(answer.message).toMatch(/^size.*: wanted .*, got /);
  return answer.message;
}

export const refusal = (message: RegExp) => ({ error: "#VALUE!", message: expect.stringMatching(message) as string });
