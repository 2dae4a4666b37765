/**
 * Names of the data attributes by which a page and its scripts find each other. Import it
 * whole, `import * as attr`, so that only the names used travel with a page. A page writes
 * them with `dataset` (dataset.ts); style sheets and tests may name them too.
 */

// The page and what the golfer has chosen on it
export const course = "data-course";
/** Ids of its tee sets, apart by spaces. */
export const courseTees = "data-course-tees";
export const firstTee = "data-first-tee";
export const courseUnits = "data-course-units";
/** How figures are worded on the page, as JSON; and on a text in another language than the page's. */
export const voice = "data-voice";
export const ownVoice = "data-own-voice";
/** On the root element: what the page shows now. On what belongs to a tee set or unit: which. */
export const tee = "data-tee";
export const units = "data-units";
export const unit = "data-unit";
export const third = "data-third";
/** Whether a browser may break long words, by the rules of the page's language: `auto` or `manual`. */
export const hyphens = "data-hyphens";
/** Name of the edition a page belongs to, and how many bytes it has. */
export const edition = "data-edition";
export const editionBytes = "data-edition-bytes";

// Settings
export const setting = "data-setting";
export const teeChoice = "data-tee-choice";
export const unitChoice = "data-unit-choice";
export const thirdChoice = "data-third-choice";
/** The sentence said of a change. */
export const changed = "data-changed";
/** Where keeping the guide on the device is offered. */
export const keep = "data-keep";

// Figures
/** Metres of a figure: see values.ts. */
export const metres = "data-metres";
/** Which figure it is. */
export const figure = "data-figure";
export const value = "data-value";
/** `up` or `down`: how it becomes a whole number; to the nearest without it. */
export const round = "data-round";
export const shown = "data-shown";
export const spoken = "data-spoken";
export const spokenUnit = "data-spoken-unit";
/** Shown for one tee set, or in one unit, only. */
export const forTee = "data-for-tee";
export const forUnit = "data-for-unit";
/** Marked when its tee set is chosen. */
export const teeRow = "data-tee-row";
export const teeColumn = "data-tee-column";
/** What it says in each unit. */
export const wordYards = "data-word-yards";
export const wordMetres = "data-word-metres";

// Drawings
/** Address of the drawing for wide screens. */
export const plate = "data-plate";
/** Where a plate lies on the measuring plane: see values.ts. */
export const plane = "data-plane";
/** Where the flag of each third stands: see values.ts. */
export const flag = "data-flag";
export const ownArc = "data-own-arc";

// Notices
export const notices = "data-notices";
export const noticeFrom = "data-notice-from";
export const noticeUntil = "data-notice-until";

// Plain figures
/** On the root element while they are on. */
export const plain = "data-plain";
export const plainSwitch = "data-plain-switch";
export const plainOnly = "data-plain-only";
/** More than distance and direction: plain figures take it away. */
export const beyondDistance = "data-beyond-distance";

// The live map
/** Of a hole or of a course. */
export const map = "data-map";
export const source = "data-source";
export const liveMapOpen = "data-live-map-open";
/** Said before the words of scripts are there. */
export const loading = "data-loading";
export const notLoaded = "data-not-loaded";
export const notDrawn = "data-not-drawn";
/** How what is opened stands: absent, `loading`, `ready` or `failed`. */
export const state = "data-state";
export const tool = "data-tool";
export const mapSpoken = "data-map-spoken";
export const camera = "data-camera";
export const relief = "data-relief";
export const photo = "data-photo";

// The flyover
export const film = "data-film";
export const courseData = "data-course-data";
export const filmStills = "data-film-stills";
export const filmStart = "data-film-start";
export const filmStatus = "data-film-status";
export const filmPlayer = "data-film-player";
export const filmView = "data-film-view";
export const filmChapter = "data-film-chapter";
export const filmCaption = "data-film-caption";
export const filmPlace = "data-film-place";
export const filmTime = "data-film-time";
export const filmToggle = "data-film-toggle";
export const filmPrevious = "data-film-previous";
export const filmNext = "data-film-next";
export const filmSpeed = "data-film-speed";
export const filmCaptions = "data-film-captions";
export const filmAnnounce = "data-film-announce";
export const filmClose = "data-film-close";
export const filmSpoken = "data-film-spoken";
export const title = "data-title";
export const playing = "data-playing";
export const settled = "data-settled";

// The day's conditions, and what they make of a table of shots
export const conditions = "data-conditions";
export const conditionsFields = "data-conditions-fields";
export const conditionsNow = "data-conditions-now";
/** Height of the ground, metres, and bearing of the hole. */
export const height = "data-height";
export const bearing = "data-bearing";
export const failed = "data-failed";
export const field = "data-field";
export const note = "data-note";
export const dial = "data-dial";
export const dialMark = "data-dial-mark";
export const windArrow = "data-wind-arrow";
export const windShaft = "data-wind-shaft";
export const windHead = "data-wind-head";
/** The table of a tee set. */
export const plays = "data-plays";
/** A row's shot: see values.ts. */
export const shot = "data-shot";
export const middle = "data-middle";
/** The row that stands for the middle's where the hole is cut in another third. */
export const thirdRow = "data-third-row";
export const carryRow = "data-carry-row";
export const reach = "data-reach";
export const today = "data-today";

// The golfer's own lengths
export const lengths = "data-lengths";
export const rung = "data-rung";
export const ladderToday = "data-ladder-today";
export const ladderTold = "data-ladder-told";
export const ladderAll = "data-ladder-all";
export const own = "data-own";
export const ownTitle = "data-own-title";
export const ownRow = "data-own-row";
export const ownDistance = "data-own-distance";
export const ownPlays = "data-own-plays";
export const ownShots = "data-own-shots";
export const ownLanding = "data-own-landing";
export const ownDrive = "data-own-drive";
export const ownValue = "data-own-value";
export const ownName = "data-own-name";
