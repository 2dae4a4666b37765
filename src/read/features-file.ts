/** Features that are kept as GeoJSON in a file beside their page, where a GIS opens them. */
import { posix } from "node:path";
import type { Diagnostic } from "../course/diagnostic.ts";
import { errorAt, type Path } from "../course/schema/finding.ts";
import { valueAt } from "../course/schema/issues.ts";
import { quote } from "../course/schema/wording.ts";
import type { SourceText } from "./source-text.ts";
import { readTextFile } from "./text-file.ts";
import { parseYaml, type YamlSource } from "./yaml-source.ts";

/** A file beside the page: a name of its own, no way to another folder. */
const NAME = /^[A-Za-z0-9][\w.-]*\.geojson$/;

export interface WithFeatures {
  /** The page as if its features stood in it; what is said of them names the file they are in. */
  readonly yaml: YamlSource;
  /** The file they are in, where that is not the page. */
  readonly beside: { readonly source: SourceText; readonly value: unknown } | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Reads the file that `features:` names; a page that has them in itself stays as it is.
 *
 * @param folder the content folder
 * @param file the page, relative to it
 */
export async function withFeatures(folder: string, file: string, yaml: YamlSource): Promise<WithFeatures> {
  const name = valueAt(yaml.value, ["features"]);
  if (typeof name !== "string") return { yaml, beside: undefined, diagnostics: [] };
  const refuse = (message: string): WithFeatures => ({
    yaml: replaced(yaml, { type: "FeatureCollection", features: [] }, undefined),
    beside: undefined,
    diagnostics: [yaml.toDiagnostic(errorAt(["features"], "features-file", message))],
  });
  if (!NAME.test(name))
    return refuse(
      `features is ${quote(name)}: expected a FeatureCollection, or the name of a .geojson file beside this page. Write features: ${posix.basename(file).replace(/\.\w+$/, "")}.geojson.`,
    );
  const path = posix.join(posix.dirname(file), name);
  const read = await readTextFile(folder, path);
  if (!read.ok) {
    return read.missing
      ? refuse(
          `There is no file ${name} beside this page, which features names. Put it there, or write the name of the one that is.`,
        )
      : { ...refuse(""), diagnostics: read.diagnostics };
  }
  const { source } = read;
  try {
    JSON.parse(source.text);
  } catch (error) {
    const at = Number(/position (\d+)/.exec(String(error))?.[1] ?? 0);
    return {
      ...refuse(""),
      diagnostics: [
        {
          ...source.placeAt(at),
          severity: "error",
          rule: "features-file",
          message: `This is not GeoJSON (${error instanceof Error ? error.message.split(" in JSON")[0] : String(error)}). Save it again from the program that made it.`,
        },
      ],
    };
  }
  // JSON is YAML too, and the YAML reader knows the line of every value.
  const parsed = parseYaml(source);
  if (!parsed.ok) return { ...refuse(""), diagnostics: parsed.diagnostics };
  return {
    yaml: replaced(yaml, parsed.yaml.value, parsed.yaml),
    beside: { source, value: parsed.yaml.value },
    diagnostics: [],
  };
}

/** The page with other features, whose places are those of the file they come from. */
function replaced(yaml: YamlSource, features: unknown, from: YamlSource | undefined): YamlSource {
  const value = { ...(yaml.value as Readonly<Record<string, unknown>>), features };
  const placeOf: YamlSource["placeOf"] = (path: Path, at) =>
    from !== undefined && path[0] === "features" && path.length > 1
      ? from.placeOf(path.slice(1), at)
      : yaml.placeOf(path, at);
  return {
    value,
    placeOf,
    toDiagnostic: ({ path, at, severity, rule, message }) => ({ ...placeOf(path, at), severity, rule, message }),
  };
}
