/**
 * JSON sized up on its bytes before it is parsed: how deep, how many values, how many
 * positions. It need not be valid; the parser says that afterwards.
 */
import { checkCount, checkDepth, LIMITS } from "./limits.ts";

const [QUOTE, BACKSLASH, COMMA, MINUS, OPEN, CLOSE, OPEN_BRACE, CLOSE_BRACE] = [
  0x22, 0x5c, 0x2c, 0x2d, 0x5b, 0x5d, 0x7b, 0x7d,
];

const isBlank = (byte: number): boolean => byte === 0x20 || byte === 0x0a || byte === 0x0d || byte === 0x09;

/** @throws BringError when the text would take more memory or depth than a map of a course needs. */
export function guardJson(file: string, bytes: Uint8Array): void {
  let [depth, tokens, positions] = [0, 0, 0];
  // Whether the last thing seen was an opening bracket: a number after it starts a position.
  let opened = false;
  for (let i = 0; i < bytes.length; i++) {
    const byte = bytes[i]!;
    if (byte === QUOTE) {
      for (i++; i < bytes.length && bytes[i] !== QUOTE; i++) if (bytes[i] === BACKSLASH) i++;
      opened = false;
    } else if (byte === OPEN || byte === OPEN_BRACE) {
      tokens++;
      checkDepth(file, ++depth);
      opened = byte === OPEN;
    } else if (byte === CLOSE || byte === CLOSE_BRACE) {
      depth--;
      opened = false;
    } else if (byte === COMMA) {
      if (++tokens > LIMITS.jsonTokens) checkCount(file, tokens, LIMITS.jsonTokens, "values");
      opened = false;
    } else if (!isBlank(byte)) {
      if (opened && (byte === MINUS || (byte >= 0x30 && byte <= 0x39)) && ++positions > LIMITS.positions) {
        checkCount(file, positions, LIMITS.positions, "positions");
      }
      opened = false;
    }
  }
  checkCount(file, tokens, LIMITS.jsonTokens, "values");
}
