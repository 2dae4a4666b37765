/**
 * The words of a guide, by group and name. Written by `npm run words` from the first
 * language's catalogue; change that, not this.
 */

/** Printed as it is. */
type Text = string | number;

export interface Catalogue {
  readonly locale: string;
  readonly hyphens: string;
  readonly labelled: (said: { readonly label: Text }) => string;
  readonly skip: string;
  readonly guide: string;
  readonly guideTo: (said: { readonly course: Text }) => string;
  readonly hole: string;
  readonly holeNumber: (said: { readonly hole: Text }) => string;
  readonly holeTitle: (said: { readonly hole: Text; readonly name: Text }) => string;
  readonly par: string;
  readonly parIs: (said: { readonly par: Text }) => string;
  readonly strokeIndex: string;
  readonly strokeIndexShort: string;
  readonly genders: {
    readonly men: string;
    readonly women: string;
  };
  readonly sides: {
    readonly left: string;
    readonly right: string;
    readonly across: string;
    readonly beyond: string;
  };
  readonly kinds: {
    readonly bunker: string;
    readonly "penalty-area-yellow": string;
    readonly "penalty-area-red": string;
    readonly water: string;
    readonly stream: string;
    readonly coastline: string;
    readonly "out-of-bounds": string;
    readonly cliff: string;
    readonly road: string;
    readonly scrub: string;
    readonly wood: string;
    readonly wall: string;
    readonly fence: string;
    readonly hedge: string;
    readonly building: string;
  };
  readonly kindsInSentence: {
    readonly bunker: string;
    readonly "penalty-area-yellow": string;
    readonly "penalty-area-red": string;
    readonly water: string;
    readonly stream: string;
    readonly coastline: string;
    readonly "out-of-bounds": string;
    readonly cliff: string;
    readonly road: string;
    readonly scrub: string;
    readonly wood: string;
    readonly wall: string;
    readonly fence: string;
    readonly hedge: string;
    readonly building: string;
  };
  readonly unnamedHazard: string;
  readonly unnamedHazardInSentence: string;
  readonly landmarks: {
    readonly lighthouse: string;
    readonly cairn: string;
    readonly beacon: string;
    readonly mast: string;
    readonly tower: string;
  };
  readonly stretch: (said: { readonly name: Text; readonly time: number }) => string;
  readonly nav: {
    readonly main: string;
    readonly languages: string;
    readonly holes: string;
    readonly previousHole: string;
    readonly nextHole: string;
    readonly chooseHole: string;
    readonly close: string;
    readonly cover: string;
    readonly card: string;
    readonly map: string;
    readonly figures: string;
    readonly courses: string;
    readonly frontNine: string;
    readonly backNine: string;
  };
  readonly settings: {
    readonly title: string;
    readonly open: (said: { readonly tee: Text; readonly unit: Text }) => string;
    readonly tee: string;
    readonly units: string;
    readonly yards: string;
    readonly metres: string;
    readonly inUnit: {
      readonly yards: string;
      readonly metres: string;
    };
    readonly third: string;
    readonly thirds: {
      readonly front: string;
      readonly middle: string;
      readonly back: string;
    };
    readonly kept: string;
    readonly changed: (said: { readonly tee: Text; readonly units: Text }) => string;
    readonly changedThird: (said: { readonly tee: Text; readonly units: Text; readonly third: Text }) => string;
  };
  readonly tell: {
    readonly units: {
      readonly yards: {
        readonly symbol: string;
        readonly many: string;
        readonly spoken: (said: { readonly number: Text; readonly count: number }) => string;
      };
      readonly metres: {
        readonly symbol: string;
        readonly many: string;
        readonly spoken: (said: { readonly number: Text; readonly count: number }) => string;
      };
      readonly feet: {
        readonly symbol: string;
        readonly many: string;
        readonly spoken: (said: { readonly number: Text; readonly count: number }) => string;
      };
    };
    readonly unnamed: (said: { readonly kind: string; readonly id: Text }) => string;
    readonly up: (said: { readonly height: Text }) => string;
    readonly down: (said: { readonly height: Text }) => string;
    readonly level: string;
    readonly fromTee: (said: { readonly tee: Text }) => string;
    readonly byTee: string;
    readonly meaning: {
      readonly length: string;
      readonly reach: (said: { readonly feature: Text; readonly corridor: Text }) => string;
      readonly carry: (said: { readonly feature: Text; readonly corridor: Text }) => string;
      readonly carryOnLine: (said: { readonly feature: Text }) => string;
      readonly leaves: (said: { readonly feature: Text }) => string;
      readonly layup: (said: { readonly leave: Text }) => string;
      readonly layupAfter: (said: { readonly drive: Text; readonly leave: Text }) => string;
      readonly fairway: (said: { readonly drive: Text }) => string;
      readonly left: (said: { readonly drive: Text }) => string;
      readonly bend: (said: { readonly angle: Text; readonly side: "left" | "right" }) => string;
      readonly span: (said: { readonly from: Text; readonly to: Text }) => string;
      readonly front: string;
      readonly middle: string;
      readonly back: string;
      readonly depth: string;
      readonly width: string;
      readonly rise: string;
      readonly aimOnLine: (said: { readonly feature: Text }) => string;
      readonly aim: (said: {
        readonly feature: Text;
        readonly angle: Text;
        readonly side: "left" | "right";
      }) => string;
    };
  };
  readonly holePage: {
    readonly plate: string;
    readonly plateCaption: string;
    readonly fromTee: (said: { readonly tee: Text }) => string;
    readonly length: string;
    readonly card: string;
    readonly carry: string;
    readonly reach: string;
    readonly leaves: string;
    readonly noCarry: string;
    readonly aim: string;
    readonly aimOnLine: string;
    readonly aimLeft: string;
    readonly aimRight: string;
    readonly green: string;
    readonly front: string;
    readonly middle: string;
    readonly back: string;
    readonly depth: string;
    readonly width: string;
    readonly rise: string;
    readonly up: (said: { readonly height: Text }) => string;
    readonly down: (said: { readonly height: Text }) => string;
    readonly level: string;
    readonly howFar: string;
    readonly hazards: string;
    readonly hazard: string;
    readonly hazardsAllTees: string;
    readonly hazardsNote: string;
    readonly reachToCarry: string;
    readonly wide: string;
    readonly toDryLand: string;
    readonly laterHazards: string;
    readonly laterNote: string;
    readonly laterAfter: string;
    readonly noCarryOffTee: string;
    readonly laterAcross: string;
    readonly layUpShort: string;
    readonly carryToGreen: string;
    readonly allTees: string;
    readonly tee: string;
    readonly howToPlay: string;
    readonly notTranslated: string;
    readonly pictures: string;
    readonly photoCredit: (said: { readonly credit: Text }) => string;
    readonly openMap: string;
    readonly bend: (said: { readonly angle: Text; readonly side: "left" | "right" }) => string;
    readonly cautionLine: string;
    readonly cautionLink: string;
    readonly definitions: string;
  };
  readonly notices: {
    readonly title: string;
    readonly forHoles: (said: { readonly count: number }) => string;
    readonly until: (said: { readonly date: Date }) => string;
    readonly between: (said: { readonly from: Date; readonly until: Date }) => string;
    readonly onDay: (said: { readonly date: Date }) => string;
  };
  readonly photos: {
    readonly marked: (said: { readonly letter: Text }) => string;
  };
  readonly cover: {
    readonly holes: string;
    readonly about: string;
    readonly localRules: string;
    readonly contact: string;
    readonly email: string;
    readonly telephone: string;
    readonly website: string;
    readonly address: string;
    readonly start: string;
    readonly holesCount: (said: { readonly count: number }) => string;
    readonly lengths: string;
    readonly out: string;
    readonly in: string;
    readonly total: string;
    readonly strokeIndexMeaning: string;
  };
  readonly card: {
    readonly title: string;
    readonly intro: (said: { readonly unit: Text }) => string;
    readonly hole: string;
    readonly name: string;
    readonly par: string;
    readonly strokeIndex: string;
    readonly out: string;
    readonly in: string;
    readonly total: string;
    readonly ratings: string;
    readonly ratingsNote: string;
    readonly courseRating: string;
    readonly bogeyRating: string;
    readonly slopeRating: string;
    readonly notOnCard: string;
    readonly measuredNote: string;
    readonly score: string;
  };
  readonly map: {
    readonly title: string;
    readonly intro: string;
    readonly holes: string;
    readonly alternative: (said: { readonly course: Text; readonly holes: number }) => string;
  };
  readonly figures: {
    readonly title: string;
    readonly intro: string;
    readonly definitions: string;
    readonly uncertainty: string;
    readonly uncertaintyText: {
      readonly arithmetic: string;
      readonly markers: string;
      readonly seasons: string;
      readonly air: string;
    };
    readonly tipsNotChecked: string;
    readonly survey: string;
    readonly surveyed: (said: { readonly date: Date }) => string;
    readonly notSurveyed: string;
    readonly corridor: (said: { readonly width: Text }) => string;
    readonly drawing: {
      readonly title: string;
      readonly description: (said: { readonly reach: Text; readonly carry: Text }) => string;
      readonly caption: string;
      readonly tee: string;
      readonly corridor: string;
      readonly lineOfPlay: string;
      readonly pond: string;
      readonly bunker: string;
      readonly dryLand: string;
      readonly reach: (said: { readonly length: Text }) => string;
      readonly carry: (said: { readonly length: Text }) => string;
    };
    readonly sources: string;
    readonly noSources: string;
    readonly list: {
      readonly length: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly reach: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly carry: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly "dry-land": {
        readonly term: string;
        readonly meaning: string;
      };
      readonly "lay-up": {
        readonly term: string;
        readonly meaning: string;
      };
      readonly later: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly leaves: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly rounding: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly green: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly depth: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly rise: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly bend: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly section: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly plays: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly "plays-carry": {
        readonly term: string;
        readonly meaning: string;
      };
      readonly run: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly wind: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly sight: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly tilt: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly tiers: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly landing: {
        readonly term: string;
        readonly meaning: string;
      };
      readonly "own-lengths": {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly corner: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
      readonly plane: {
        readonly term: string;
        readonly meaning: string;
        readonly formula: string;
      };
    };
    readonly formula: string;
    readonly privacy: string;
    readonly privacyText: string;
    readonly rules: string;
    readonly rulesText: string;
  };
  readonly cautions: {
    readonly title: string;
    readonly lead: string;
    readonly general: {
      readonly lightning: {
        readonly title: string;
        readonly text: string;
      };
      readonly balls: {
        readonly title: string;
        readonly text: string;
      };
      readonly cliffs: {
        readonly title: string;
        readonly text: string;
      };
      readonly water: {
        readonly title: string;
        readonly text: string;
      };
      readonly roads: {
        readonly title: string;
        readonly text: string;
      };
      readonly paths: {
        readonly title: string;
        readonly text: string;
      };
    };
    readonly club: string;
    readonly nearby: {
      readonly cliff: string;
      readonly water: string;
      readonly road: string;
      readonly boundary: string;
    };
  };
  readonly club: {
    readonly courses: string;
  };
  readonly notFound: {
    readonly title: string;
    readonly text: string;
    readonly back: string;
  };
  readonly footer: {
    readonly surveyed: (said: { readonly date: Date }) => string;
    readonly cautions: string;
    readonly figures: string;
    readonly measured: string;
    readonly licences: string;
  };
  readonly draft: {
    readonly line: (said: { readonly reasons: Text }) => string;
    readonly label: string;
    readonly shapes: string;
    readonly proposed: string;
    readonly figures: string;
    readonly tip: string;
    readonly sources: string;
    readonly fromPlaceholders: string;
    readonly fromSources: (said: { readonly sources: Text }) => string;
    readonly fromClub: string;
    readonly intro: string;
    readonly mapData: (said: { readonly credits: Text }) => string;
  };
  readonly ground: {
    readonly section: {
      readonly title: string;
      readonly exaggeration: (said: { readonly times: Text }) => string;
      readonly unseenKey: string;
      readonly inWords: string;
      readonly at: (said: { readonly distance: Text; readonly height: Text }) => string;
      readonly up: (said: { readonly height: Text }) => string;
      readonly down: (said: { readonly height: Text }) => string;
      readonly level: string;
    };
    readonly rise: {
      readonly up: (said: { readonly height: Text }) => string;
      readonly down: (said: { readonly height: Text }) => string;
      readonly level: string;
      readonly evenly: string;
      readonly mostFirst: (said: { readonly length: Text }) => string;
      readonly mostLast: (said: { readonly length: Text }) => string;
      readonly mostBetween: (said: { readonly from: Text; readonly to: Text }) => string;
      readonly onTheWay: (said: { readonly up: Text; readonly down: Text }) => string;
    };
    readonly sight: {
      readonly greenHidden: string;
      readonly flagOnly: string;
      readonly greenPart: string;
      readonly landingHidden: (said: { readonly drive: Text }) => string;
      readonly greenHiddenAfter: (said: { readonly drive: Text }) => string;
    };
    readonly plays: {
      readonly title: string;
      readonly caption: (said: { readonly tee: Text }) => string;
      readonly captionIn: (said: { readonly tee: Text; readonly unit: Text }) => string;
      readonly afterDrive: (said: { readonly drive: Text; readonly player: Text }) => string;
      readonly fromTee: string;
      readonly what: string;
      readonly distance: string;
      readonly plays: string;
      readonly run: string;
      readonly today: string;
      readonly front: string;
      readonly middle: string;
      readonly back: string;
      readonly carry: (said: { readonly name: Text }) => string;
      readonly overCorner: string;
      readonly moreThanOne: string;
      readonly note: (said: { readonly temperature: Text }) => string;
      readonly runNote: string;
    };
    readonly green: {
      readonly tilt: string;
      readonly tiltIs: (said: { readonly percent: Text }) => string;
      readonly lies: (said: {
        readonly along: "rises" | "falls" | "level";
        readonly across: "left" | "right" | "level";
      }) => string;
      readonly below: {
        readonly short: string;
        readonly long: string;
        readonly left: string;
        readonly right: string;
      };
      readonly tiers: (said: { readonly step: Text; readonly upper: Text }) => string;
      readonly tierSides: {
        readonly short: string;
        readonly long: string;
        readonly left: string;
        readonly right: string;
      };
      readonly falseFront: (said: { readonly depth: Text; readonly percent: Text }) => string;
      readonly key: (said: { readonly interval: Text }) => string;
      readonly scale: string;
      readonly asMet: (said: { readonly tee: Text }) => string;
    };
    readonly landing: {
      readonly title: string;
      readonly intro: string;
      readonly list: string;
      readonly from: (said: { readonly tee: Text; readonly drive: Text }) => string;
      readonly fairway: string;
      readonly offFairway: string;
      readonly leaves: string;
      readonly sides: {
        readonly left: string;
        readonly right: string;
      };
      readonly clear: string;
      readonly lie: string;
      readonly uphill: (said: { readonly percent: Text }) => string;
      readonly downhill: (said: { readonly percent: Text }) => string;
      readonly fallsLeft: (said: { readonly percent: Text }) => string;
      readonly fallsRight: (said: { readonly percent: Text }) => string;
      readonly level: string;
      readonly view: string;
      readonly seen: string;
      readonly hidden: string;
      readonly seesGreen: string;
      readonly greenHidden: string;
      readonly next: string;
      readonly nextLeaves: (said: { readonly length: Text }) => string;
      readonly yours: string;
      readonly yoursNote: string;
      readonly drawingNote: string;
    };
    readonly corner: {
      readonly title: string;
      readonly none: string;
      readonly straight: (said: {
        readonly side: "left" | "right";
        readonly carry: Text;
        readonly what: Text;
      }) => string;
      readonly nothing: (said: { readonly side: "left" | "right"; readonly length: Text }) => string;
      readonly outOfBounds: string;
      readonly outAndBack: (said: { readonly out: Text; readonly back: Text }) => string;
      readonly outAndNotBack: (said: { readonly out: Text }) => string;
      readonly outOfBoundsRule: string;
      readonly topLevel: (said: { readonly what: Text }) => string;
      readonly top: (said: {
        readonly what: Text;
        readonly height: Text;
        readonly place: "above" | "below";
      }) => string;
      readonly plays: (said: { readonly length: Text }) => string;
      readonly saves: (said: { readonly length: Text }) => string;
      readonly reachable: (said: { readonly players: Text }) => string;
      readonly reachableNone: string;
      readonly caution: string;
    };
    readonly players: {
      readonly "scratch-men": string;
      readonly "bogey-men": string;
      readonly "scratch-women": string;
      readonly "bogey-women": string;
    };
    readonly conditions: {
      readonly open: string;
      readonly compass: string;
      readonly compassHint: string;
      readonly from: string;
      readonly speed: string;
      readonly temperature: string;
      readonly carry: string;
      readonly carryHint: string;
      readonly lengths: {
        readonly shots: {
          readonly driver: string;
          readonly "fairway-wood": string;
          readonly hybrid: string;
          readonly "long-iron": string;
          readonly "mid-iron": string;
          readonly "short-iron": string;
          readonly "pitching-wedge": string;
          readonly "sand-wedge": string;
        };
        readonly caption: string;
        readonly shot: string;
        readonly carry: (said: { readonly unit: Text }) => string;
        readonly today: string;
        readonly field: (said: { readonly shot: Text; readonly unit: Text }) => string;
        readonly own: string;
        readonly takeBack: (said: { readonly length: Text }) => string;
        readonly takeBackPlain: string;
        readonly takeBackAll: string;
        readonly takenBack: (said: { readonly shot: Text }) => string;
        readonly allTakenBack: string;
        readonly needsDriver: string;
        readonly rule: string;
        readonly kept: string;
        readonly outOfOrder: (said: { readonly shorter: Text; readonly longer: Text }) => string;
        readonly title: string;
        readonly from: (said: { readonly tee: Text }) => string;
        readonly toCarry: (said: { readonly name: Text; readonly length: Text }) => string;
        readonly toStayShort: (said: { readonly name: Text; readonly length: Text }) => string;
        readonly longest: (said: { readonly shot: Text }) => string;
        readonly endsClear: string;
        readonly toGreen: {
          readonly front: (said: { readonly length: Text }) => string;
          readonly middle: (said: { readonly length: Text }) => string;
          readonly back: (said: { readonly length: Text }) => string;
        };
        readonly afterDrive: {
          readonly front: (said: { readonly drive: Text; readonly length: Text }) => string;
          readonly middle: (said: { readonly drive: Text; readonly length: Text }) => string;
          readonly back: (said: { readonly drive: Text; readonly length: Text }) => string;
        };
        readonly orLonger: (said: { readonly shot: Text }) => string;
        readonly noneCarries: string;
        readonly spare: (said: { readonly length: Text }) => string;
        readonly short: (said: { readonly length: Text }) => string;
        readonly past: (said: { readonly length: Text }) => string;
        readonly lessThan: (said: { readonly shot: Text }) => string;
        readonly leaves: (said: { readonly length: Text }) => string;
        readonly lands: (said: { readonly length: Text }) => string;
        readonly note: string;
        readonly noteLevel: string;
        readonly arc: string;
      };
      readonly openLengths: string;
      readonly titleLevel: string;
      readonly holeUp: string;
      readonly clear: string;
      readonly todayNote: string;
      readonly kept: string;
      readonly units: {
        readonly yards: string;
        readonly metres: string;
        readonly degrees: string;
        readonly celsius: string;
      };
      readonly script: {
        readonly still: string;
        readonly now: (said: { readonly wind: Text; readonly temperature: Text }) => string;
        readonly thirdNow: (said: { readonly third: Text; readonly distance: Text; readonly length: Text }) => string;
        readonly middleNow: (said: { readonly distance: Text; readonly length: Text }) => string;
        readonly windNow: (said: { readonly speed: Text; readonly unit: Text; readonly from: Text }) => string;
        readonly compassPoints: {
          readonly n: string;
          readonly ne: string;
          readonly e: string;
          readonly se: string;
          readonly s: string;
          readonly sw: string;
          readonly w: string;
          readonly nw: string;
        };
        readonly outside: (said: {
          readonly name: Text;
          readonly least: Text;
          readonly most: Text;
          readonly unit: Text;
        }) => string;
        readonly notANumber: (said: {
          readonly name: Text;
          readonly least: Text;
          readonly most: Text;
          readonly unit: Text;
        }) => string;
        readonly windSpeed: string;
        readonly windFrom: string;
        readonly temperature: string;
        readonly carry: string;
        readonly degreesUnit: string;
        readonly indication: string;
        readonly strongWind: string;
        readonly unmeasuredDriver: string;
        readonly onTheLevel: (said: { readonly level: Text }) => string;
        readonly tooLong: string;
        readonly tooShort: string;
        readonly unreachable: string;
        readonly driftLeft: (said: { readonly length: Text }) => string;
        readonly driftRight: (said: { readonly length: Text }) => string;
        readonly afterYours: (said: { readonly drive: Text }) => string;
        readonly withinYours: string;
        readonly beyondYours: string;
        readonly failed: string;
      };
      readonly compassLetters: {
        readonly n: string;
        readonly e: string;
        readonly s: string;
        readonly w: string;
      };
    };
    readonly heightModel: (said: { readonly step: Text }) => string;
    readonly plain: {
      readonly turnOn: string;
      readonly state: string;
      readonly meaning: string;
      readonly tipNote: string;
      readonly captionsNote: string;
    };
    readonly playersInSentence: {
      readonly "scratch-men": string;
      readonly "bogey-men": string;
      readonly "scratch-women": string;
      readonly "bogey-women": string;
    };
  };
  readonly draw: {
    readonly north: string;
    readonly par: string;
    readonly strokeIndex: string;
    readonly outOfBounds: string;
    readonly surveyed: (said: { readonly date: Date }) => string;
    readonly legend: {
      readonly arcs: string;
      readonly left: string;
      readonly hazard: string;
      readonly bend: string;
    };
    readonly plateTitle: (said: { readonly hole: Text; readonly name: Text }) => string;
    readonly plateDescription: string;
    readonly courseTitle: (said: { readonly course: Text }) => string;
  };
  readonly drawGround: {
    readonly profileTitle: (said: { readonly hole: Text; readonly tee: Text }) => string;
    readonly profileDescription: string;
    readonly tee: string;
    readonly drive: (said: { readonly length: Text }) => string;
    readonly sides: {
      readonly left: string;
      readonly right: string;
    };
    readonly greenTitle: (said: { readonly hole: Text }) => string;
    readonly greenDescription: string;
    readonly front: string;
    readonly middle: string;
    readonly back: string;
    readonly falseFront: string;
    readonly upperTier: string;
    readonly lowerTier: string;
    readonly landingTitle: (said: { readonly hole: Text }) => string;
    readonly landingDescription: string;
    readonly left: (said: { readonly length: Text }) => string;
    readonly wide: (said: { readonly length: Text }) => string;
    readonly players: {
      readonly "scratch-men": string;
      readonly "bogey-men": string;
      readonly "scratch-women": string;
      readonly "bogey-women": string;
    };
    readonly yours: string;
  };
  readonly film: {
    readonly flyHole: string;
    readonly flyRound: string;
    readonly title: (said: { readonly hole: Text; readonly name: Text }) => string;
    readonly tourTitle: (said: { readonly course: Text }) => string;
    readonly description: (said: { readonly title: Text }) => string;
    readonly tourDescription: (said: { readonly holes: number; readonly course: Text }) => string;
    readonly flownFrom: (said: { readonly tee: Text; readonly unit: Text }) => string;
    readonly levelGround: string;
    readonly storyboard: string;
    readonly chapters: {
      readonly tee: string;
      readonly landing: string;
      readonly approach: string;
      readonly green: string;
    };
    readonly transcript: string;
    readonly captionsFile: string;
    readonly holes: string;
    readonly holeBegins: (said: {
      readonly hole: Text;
      readonly name: Text;
      readonly par: Text;
      readonly length: Text;
    }) => string;
    readonly backToHole: (said: { readonly hole: Text }) => string;
    readonly backToMap: string;
    readonly previousFlight: string;
    readonly nextFlight: string;
    readonly player: {
      readonly label: string;
      readonly controls: string;
      readonly start: string;
      readonly startRound: string;
      readonly loading: string;
      readonly play: string;
      readonly pause: string;
      readonly previous: string;
      readonly next: string;
      readonly place: string;
      readonly placeIs: (said: { readonly time: Text; readonly length: Text; readonly chapter: Text }) => string;
      readonly speed: string;
      readonly speedIs: (said: { readonly times: Text }) => string;
      readonly captions: string;
      readonly announce: string;
      readonly close: string;
      readonly keys: string;
      readonly view: (said: { readonly title: Text }) => string;
      readonly failed: {
        readonly data: string;
        readonly webgl: string;
        readonly lost: string;
      };
    };
  };
  readonly keep: {
    readonly keep: string;
    readonly before: (said: { readonly size: Text }) => string;
    readonly keeping: (said: { readonly done: Text; readonly size: Text }) => string;
    readonly stop: string;
    readonly kept: (said: { readonly size: Text }) => string;
    readonly newer: (said: { readonly size: Text }) => string;
    readonly update: string;
    readonly stale: string;
    readonly reload: string;
    readonly remove: string;
    readonly removed: string;
    readonly again: string;
    readonly megabytes: (said: { readonly number: Text }) => string;
    readonly faults: {
      readonly network: string;
      readonly changed: string;
      readonly full: (said: { readonly size: Text }) => string;
      readonly refused: string;
      readonly unsupported: string;
    };
  };
  readonly liveMap: {
    readonly loading: string;
    readonly failed: {
      readonly data: string;
      readonly webgl: string;
      readonly lost: string;
    };
    readonly close: string;
    readonly zoomIn: string;
    readonly zoomOut: string;
    readonly reset: string;
    readonly resetCourse: string;
    readonly controls: string;
    readonly holeMap: (said: { readonly hole: Text; readonly name: Text }) => string;
    readonly courseMap: (said: { readonly course: Text }) => string;
    readonly holeKeys: string;
    readonly courseKeys: string;
    readonly holeHint: string;
    readonly courseHint: string;
    readonly noHole: string;
    readonly whatItDoes: string;
    readonly tools: {
      readonly relief: string;
      readonly photo: string;
      readonly shots: string;
      readonly whereAmI: string;
      readonly plain: string;
    };
    readonly reliefNote: (said: { readonly times: Text }) => string;
    readonly reliefOn: (said: { readonly times: Text }) => string;
    readonly reliefOff: string;
    readonly photoOn: string;
    readonly photoOff: string;
    readonly reading: string;
    readonly clearTap: string;
    readonly wheelControl: string;
    readonly wheelCommand: string;
    readonly touch: string;
    readonly read: {
      readonly tee: (said: { readonly tee: Text }) => string;
      readonly fromMe: string;
      readonly front: string;
      readonly middle: string;
      readonly back: string;
      readonly fromTeeSaid: (said: { readonly tee: Text; readonly length: Text }) => string;
      readonly fromMeSaid: (said: { readonly length: Text }) => string;
      readonly greenSaid: {
        readonly front: (said: { readonly front: Text; readonly hole: Text; readonly back: Text }) => string;
        readonly middle: (said: { readonly front: Text; readonly hole: Text; readonly back: Text }) => string;
        readonly back: (said: { readonly front: Text; readonly hole: Text; readonly back: Text }) => string;
      };
      readonly onGreenSaid: {
        readonly front: (said: { readonly length: Text }) => string;
        readonly middle: (said: { readonly length: Text }) => string;
        readonly back: (said: { readonly length: Text }) => string;
      };
      readonly under: (said: { readonly what: Text }) => string;
      readonly underHazard: (said: { readonly what: Text; readonly figures: Text }) => string;
      readonly then: (said: { readonly list: Text; readonly next: Text }) => string;
      readonly reach: (said: { readonly reach: Text }) => string;
      readonly reachCarry: (said: { readonly reach: Text; readonly carry: Text }) => string;
      readonly reachCarryToGreen: (said: { readonly reach: Text; readonly carry: Text }) => string;
      readonly named: (said: { readonly name: Text; readonly kind: Text }) => string;
      readonly ahead: (said: { readonly hazards: Text }) => string;
      readonly aheadFromTee: (said: { readonly hazards: Text }) => string;
      readonly hazardAhead: (said: { readonly hazard: Text; readonly figures: Text }) => string;
      readonly and: (said: { readonly list: Text; readonly next: Text }) => string;
      readonly kinds: {
        readonly bunker: {
          readonly alone: string;
          readonly bracketed: string;
          readonly left: string;
          readonly right: string;
          readonly across: string;
        };
        readonly "penalty-area-yellow": {
          readonly alone: string;
          readonly bracketed: string;
          readonly left: string;
          readonly right: string;
          readonly across: string;
        };
        readonly "penalty-area-red": {
          readonly alone: string;
          readonly bracketed: string;
          readonly left: string;
          readonly right: string;
          readonly across: string;
        };
        readonly water: {
          readonly alone: string;
          readonly bracketed: string;
          readonly left: string;
          readonly right: string;
          readonly across: string;
        };
        readonly "out-of-bounds": {
          readonly alone: string;
          readonly bracketed: string;
          readonly left: string;
          readonly right: string;
          readonly across: string;
        };
        readonly green: {
          readonly alone: string;
          readonly bracketed: string;
          readonly left: string;
          readonly right: string;
          readonly across: string;
        };
        readonly fairway: {
          readonly alone: string;
          readonly bracketed: string;
          readonly left: string;
          readonly right: string;
          readonly across: string;
        };
      };
      readonly hazard: {
        readonly alone: string;
        readonly bracketed: string;
        readonly left: string;
        readonly right: string;
        readonly across: string;
      };
    };
    readonly plays: {
      readonly figure: (said: { readonly length: Text; readonly spread: Text }) => string;
      readonly leg: (said: { readonly rise: Text; readonly length: Text; readonly spread: Text }) => string;
      readonly legDriftLeft: (said: {
        readonly rise: Text;
        readonly length: Text;
        readonly spread: Text;
        readonly drift: Text;
      }) => string;
      readonly legDriftRight: (said: {
        readonly rise: Text;
        readonly length: Text;
        readonly spread: Text;
        readonly drift: Text;
      }) => string;
      readonly up: (said: { readonly height: Text }) => string;
      readonly down: (said: { readonly height: Text }) => string;
      readonly level: string;
      readonly indication: string;
      readonly there: (said: { readonly leg: Text }) => string;
      readonly onward: {
        readonly front: (said: { readonly leg: Text }) => string;
        readonly middle: (said: { readonly leg: Text }) => string;
        readonly back: (said: { readonly leg: Text }) => string;
      };
      readonly still: (said: { readonly degrees: Text }) => string;
      readonly wind: (said: { readonly degrees: Text }) => string;
    };
    readonly own: {
      readonly label: (said: { readonly drive: Text; readonly width: Text }) => string;
      readonly labelOff: (said: { readonly drive: Text }) => string;
      readonly said: {
        readonly front: (said: { readonly drive: Text; readonly width: Text; readonly left: Text }) => string;
        readonly middle: (said: { readonly drive: Text; readonly width: Text; readonly left: Text }) => string;
        readonly back: (said: { readonly drive: Text; readonly width: Text; readonly left: Text }) => string;
      };
      readonly saidOff: {
        readonly front: (said: { readonly drive: Text; readonly left: Text }) => string;
        readonly middle: (said: { readonly drive: Text; readonly left: Text }) => string;
        readonly back: (said: { readonly drive: Text; readonly left: Text }) => string;
      };
      readonly nextSaid: {
        readonly front: (said: { readonly drive: Text; readonly width: Text; readonly left: Text }) => string;
        readonly middle: (said: { readonly drive: Text; readonly width: Text; readonly left: Text }) => string;
        readonly back: (said: { readonly drive: Text; readonly width: Text; readonly left: Text }) => string;
      };
      readonly nextSaidOff: {
        readonly front: (said: { readonly drive: Text; readonly left: Text }) => string;
        readonly middle: (said: { readonly drive: Text; readonly left: Text }) => string;
        readonly back: (said: { readonly drive: Text; readonly left: Text }) => string;
      };
    };
    readonly chain: {
      readonly hint: (said: { readonly tee: Text }) => string;
      readonly shot: (said: { readonly number: Text }) => string;
      readonly left: string;
      readonly shotSaid: (said: { readonly number: Text; readonly length: Text }) => string;
      readonly leftSaid: {
        readonly front: (said: { readonly length: Text }) => string;
        readonly middle: (said: { readonly length: Text }) => string;
        readonly back: (said: { readonly length: Text }) => string;
      };
      readonly onGreenSaid: string;
      readonly most: string;
      readonly undo: string;
      readonly clear: string;
      readonly cleared: string;
    };
    readonly me: {
      readonly explain: string;
      readonly agree: string;
      readonly refuse: string;
      readonly asking: string;
      readonly accuracy: (said: { readonly length: Text }) => string;
      readonly coarse: (said: { readonly length: Text }) => string;
      readonly outside: (said: { readonly length: Text; readonly accuracy: Text }) => string;
      readonly faults: {
        readonly denied: string;
        readonly unavailable: string;
        readonly unsupported: string;
      };
      readonly plain: string;
      readonly allFigures: string;
      readonly kilometres: (said: { readonly number: Text }) => string;
      readonly miles: (said: { readonly number: Text }) => string;
    };
  };
  readonly paper: {
    readonly book: {
      readonly title: string;
      readonly documentTitle: (said: { readonly course: Text }) => string;
      readonly figuresFrom: (said: { readonly unit: Text; readonly tees: Text }) => string;
      readonly fromTee: (said: { readonly tee: Text }) => string;
      readonly howTo: string;
      readonly howToRead: {
        readonly plate: {
          readonly term: string;
          readonly meaning: string;
        };
        readonly arc: {
          readonly term: string;
          readonly meaning: string;
        };
        readonly left: {
          readonly term: string;
          readonly meaning: string;
        };
        readonly hazard: {
          readonly term: string;
          readonly meaning: string;
        };
        readonly bend: {
          readonly term: string;
          readonly meaning: string;
        };
        readonly figures: {
          readonly term: string;
          readonly meaning: string;
        };
        readonly landing: {
          readonly term: string;
          readonly meaning: string;
        };
        readonly green: {
          readonly term: string;
          readonly meaning: string;
        };
      };
      readonly limits: string;
      readonly limitsText: {
        readonly sizes: string;
        readonly writing: string;
        readonly printing: string;
      };
      readonly landing: string;
      readonly drive: string;
      readonly wide: string;
      readonly left: string;
      readonly right: string;
      readonly leaves: string;
      readonly offFairway: string;
      readonly clear: string;
      readonly noTrouble: string;
      readonly notes: string;
      readonly scale: (said: { readonly denominator: Text }) => string;
      readonly greenScale: (said: { readonly denominator: Text }) => string;
      readonly sides: {
        readonly left: string;
        readonly right: string;
        readonly across: string;
        readonly beyond: string;
      };
      readonly continued: (said: { readonly title: Text }) => string;
      readonly screenNote: string;
      readonly print: string;
      readonly backToGuide: string;
    };
    readonly care: string;
    readonly nearby: {
      readonly cliff: string;
      readonly water: string;
      readonly road: string;
      readonly boundary: string;
    };
    readonly careRule: string;
    readonly card: {
      readonly documentTitle: (said: { readonly course: Text }) => string;
      readonly player: (said: { readonly letter: Text }) => string;
      readonly date: string;
      readonly competition: string;
      readonly tees: string;
      readonly strokeIndex: string;
      readonly total: string;
      readonly marker: string;
      readonly markerSignature: string;
      readonly playerSignature: string;
      readonly net: string;
      readonly handicap: string;
      readonly dots: string;
      readonly given: string;
      readonly allowance: (said: { readonly percent: Text }) => string;
      readonly certified: string;
    };
    readonly sign: {
      readonly documentTitle: (said: { readonly course: Text }) => string;
      readonly scan: string;
      readonly figuresFrom: (said: { readonly unit: Text; readonly tee: Text }) => string;
    };
  };
}
