/** A catalogue as plain data: what {@link speak} makes a language's words of. */
import type { CompiledMessage } from "icu-minify/format";
import { isGroup, type Group } from "./catalogue.ts";

export interface CompiledGroup {
  readonly [name: string]: CompiledMessage | CompiledGroup;
}

/** @param order the first catalogue's, so that what is listed is listed alike in every language */
export function compiledGroup(group: Group, order: Group = group): CompiledGroup {
  return Object.fromEntries(
    [...order.entries()].flatMap(([name, first]) => {
      const value = group.get(name)?.value;
      if (value === undefined) return [];
      return [
        [
          name,
          isGroup(value) && isGroup(first.value)
            ? compiledGroup(value, first.value)
            : isGroup(value)
              ? compiledGroup(value)
              : value.compiled,
        ],
      ];
    }),
  );
}
