/** What is used of libraries that bring no types of their own. */

declare module "osmtogeojson" {
  import type { FeatureCollection, Geometry } from "geojson";

  interface Properties {
    readonly type: "node" | "way" | "relation";
    readonly id: number;
    readonly tags: Readonly<Record<string, unknown>>;
    /** Some of its members were missing. */
    readonly tainted?: boolean;
    readonly geometry?: "center" | "bounds";
    readonly relations: readonly { readonly role?: string; readonly reltags?: Readonly<Record<string, unknown>> }[];
  }

  export default function osmtogeojson(data: {
    readonly elements: readonly object[];
  }): FeatureCollection<Geometry, Properties>;
}

declare module "shpjs" {
  import type { Geometry } from "geojson";

  /** One geometry for each record, null for a null shape. */
  export function parseShp(shp: ArrayBuffer | ArrayBufferView, prj?: string | false): (Geometry | null)[];
  export function parseDbf(dbf: ArrayBuffer | ArrayBufferView, cpg?: string): Record<string, unknown>[];
}
