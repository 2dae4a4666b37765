/**
 * What a club, its courses, their holes, tees and features are. These values are complete
 * and checked: whoever holds one need not ask again whether a field is there or sane.
 * Lengths in metres, whatever unit the content was written in.
 */
import type { Geometry } from "geojson";
import type { LengthUnit } from "../geo/units.ts";
import type { FeatureKind } from "./kinds.ts";

export type { FeatureKind };

/** The two sets of ratings the World Handicap System keeps. */
export type Gender = "men" | "women";

/** A value for each gender; equal where the club writes one for both. */
export interface PerGender {
  readonly men: number;
  readonly women: number;
}

/** Where something was written, for messages: lines and columns count from 1. */
export interface Place {
  /** Path as the club would type it, relative to the content folder. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** What can be said in several languages. */
export interface Translatable {
  /**
   * Fields that stand in the club's first language though all around them is in another:
   * nobody has translated them. Only in a guide seen in another language.
   */
  readonly untranslated?: readonly string[];
}

export interface Club extends Translatable {
  readonly name: string;
  readonly place: string | undefined;
  /**
   * BCP 47 tag of the language its texts are in here: the first of {@link languages} as read, another where
   * the guide is seen in that.
   */
  readonly language: string;
  /** Every language the guide is published in. The content is written in the first. */
  readonly languages: readonly string[];
  readonly translations: Translations<ClubTranslation>;
  readonly units: LengthUnit;
  /** A sentence that says the club is invented; shown in every footer. */
  readonly invented: string | undefined;
  readonly contact: {
    readonly email: string | undefined;
    readonly telephone: string | undefined;
    readonly website: string | undefined;
    readonly address: string | undefined;
  };
  readonly cautions: readonly string[];
  readonly localRules: readonly string[];
  readonly courses: readonly Course[];
}

/** By BCP 47 tag; a language with nothing translated is absent. */
export type Translations<T> = Readonly<Record<string, T>>;

/** What club.yaml says, in another language. What is undefined stays in the first. */
export interface ClubTranslation {
  readonly name: string | undefined;
  readonly place: string | undefined;
  readonly invented: string | undefined;
  readonly address: string | undefined;
  readonly cautions: readonly string[] | undefined;
  readonly localRules: readonly string[] | undefined;
}

/** Names and notices, in another language. */
interface NamesTranslation {
  readonly name: string | undefined;
  /** By feature id. */
  readonly features: Readonly<Record<string, string>>;
  /** In the order of the notices they translate; undefined stays in the first language. */
  readonly notices: readonly (string | undefined)[];
  readonly place: Place;
}

export interface CourseTranslation extends NamesTranslation {
  readonly description: string | undefined;
  readonly sources: readonly string[] | undefined;
  /** Names of tee sets, by id. */
  readonly tees: Readonly<Record<string, string>>;
}

export interface HoleTranslation extends NamesTranslation {
  readonly aim: string | undefined;
  /** By the photo's path relative to the content folder. */
  readonly photos: Readonly<Record<string, PhotoTranslation>>;
  readonly tip: Tip | undefined;
}

export interface PhotoTranslation {
  readonly alt: string | undefined;
  readonly caption: string | undefined;
}

/** A field of a hole's page that may be marked as not the club's own yet. */
export type MarkedField = "par" | "strokeIndex" | "card";

export interface Rating {
  readonly gender: Gender;
  readonly courseRating: number;
  readonly bogeyRating: number | undefined;
  readonly slopeRating: number;
  readonly par: number;
}

/** A set of tees, one marker per hole. */
export interface TeeSet {
  readonly id: string;
  readonly name: string;
  /** CSS hex colour, `#rrggbb`. */
  readonly colour: string;
  readonly ratings: readonly Rating[];
}

/** A source with what its licence asks for. */
export interface Credit {
  /** Which of the course's sources it is. */
  readonly source: number;
  /** Undefined while nobody has said whom to name. */
  readonly text: string | undefined;
  /** Name of the licence; undefined while nobody has said it. */
  readonly licence: string | undefined;
  /** Where the licence or the source is explained. */
  readonly link: string | undefined;
  /** Files that came from it. */
  readonly files: readonly string[];
  readonly place: Place;
}

export interface Course extends Translatable {
  readonly translations: Translations<CourseTranslation>;
  /** Folder name; the course's part of every address. */
  readonly id: string;
  readonly name: string;
  /** Markdown. */
  readonly description: string;
  /** ISO date the geometry was surveyed, if the club says. */
  readonly surveyed: string | undefined;
  /** In sentences, in the club's first language. */
  readonly sources: readonly string[];
  /** Of sources that ask for it: whom to name, and under what licence. */
  readonly credits: readonly Credit[];
  /** Files that `bring` took features from, by their names. */
  readonly brought: readonly string[];
  readonly defaultTee: string;
  /** Half-width of the shot corridor. */
  readonly corridorMetres: number;
  /** Longest first. */
  readonly tees: readonly TeeSet[];
  /** Features that holes share. */
  readonly features: readonly Feature[];
  /** In order of play: 1 to 9 or 1 to 18. */
  readonly holes: readonly Hole[];
  /** Rules of the check that do not apply to this course, with the club's reasons. */
  readonly silence: readonly Silence[];
  /** Dated notices for the course or some of its holes; those of one hole's page are with the hole. */
  readonly notices: readonly Notice[];
  /** A photo from the air, if the course has one. */
  readonly orthophoto: Orthophoto | undefined;
  /** The DEM, if the course has one: path relative to the content folder, and its proj string where given. */
  readonly ground: { readonly file: string; readonly crs: string | undefined } | undefined;
}

export interface Photo extends Translatable {
  /** Path relative to the content folder. */
  readonly file: string;
  readonly alt: string;
  readonly caption: string | undefined;
  readonly credit: string | undefined;
  /** What the picture is about, as shares of its width and height from the upper left; crops keep it in view. */
  readonly focus: readonly [x: number, y: number] | undefined;
  readonly taken: Viewpoint | undefined;
  /** Where its file is named. */
  readonly place: Place;
}

/** Where a photo was taken: a position, or a feature (`tee`: the default tee's marker). */
export interface Viewpoint {
  /** RFC 7946: longitude, latitude. */
  readonly at: readonly [longitude: number, latitude: number] | undefined;
  /** Id of a feature of the hole or its course; there is one of the two. */
  readonly from: string | undefined;
  /** Id of the feature the camera looked at. */
  readonly towards: string | undefined;
}

/** What a club tells for some days. Dates are ISO; it holds on the first and the last of them. */
export interface Notice extends Translatable {
  /** Undefined: at once. */
  readonly from: string | undefined;
  readonly until: string;
  readonly text: string;
  /** Numbers of the holes it is about; undefined on a hole's own page and for a whole course. */
  readonly holes: readonly number[] | undefined;
  readonly place: Place;
}

/** A georeferenced photo from the air. */
export interface Orthophoto {
  /** Path relative to the content folder. */
  readonly file: string;
  /** EPSG code or proj string, where the file does not say it well. */
  readonly crs: string | undefined;
  /**
   * Positions of the picture's corners, clockwise from its upper left, where the file has no georeference of
   * its own.
   */
  readonly corners: readonly (readonly [longitude: number, latitude: number])[] | undefined;
  readonly place: Place;
}

/** A rule of the check that the club has silenced. */
export interface Silence {
  /** The rule's name, as its messages show it. */
  readonly rule: string;
  readonly because: string;
  readonly place: Place;
}

export interface Tip {
  readonly markdown: string;
  /** Where its first character stands. */
  readonly place: Place;
  /** Language of a translation; left out where it is in the content's first. */
  readonly language?: string;
}

export interface Hole extends Translatable {
  readonly translations: Translations<HoleTranslation>;
  readonly number: number;
  readonly name: string;
  /** `NN-words` of its file; the hole's part of its address is its number. */
  readonly slug: string;
  readonly par: PerGender;
  readonly strokeIndex: PerGender;
  /** Fields whose values stand for the club's own: par, strokeIndex, card. */
  readonly placeholder: readonly MarkedField[];
  /** Fields whose values were worked out from the ground, until the club confirms them. */
  readonly proposed: readonly MarkedField[];
  /** Where to aim from the tee, in a few words of the club's; undefined where the guide finds something itself. */
  readonly aim: string | undefined;
  /** The printed card, by tee set. A tee set not used on this hole is absent. */
  readonly cardMetres: Readonly<Record<string, number>>;
  readonly photos: readonly Photo[];
  readonly features: readonly Feature[];
  readonly tip: Tip;
  readonly notices: readonly Notice[];
  /** Rules of the check that do not apply to this hole, with the club's reasons. */
  readonly silence: readonly Silence[];
  readonly place: Place;
}

export interface Feature {
  readonly id: string;
  readonly kind: FeatureKind;
  readonly name: string | undefined;
  /** Tee set of a marker or teeing ground. */
  readonly tee: string | undefined;
  readonly widthMetres: number | undefined;
  readonly heightMetres: number | undefined;
  /** RFC 7946 geometry, never null and never a GeometryCollection. */
  readonly geometry: Exclude<Geometry, { type: "GeometryCollection" }>;
  /** The tags as written, for export and drawing details. */
  readonly tags: Readonly<Record<string, string | number | boolean>>;
  readonly place: Place;
}
