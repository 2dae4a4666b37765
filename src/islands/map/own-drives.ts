/**
 * The golfer's drive and longest stroke after it, as far as they carry in the day's air and on this ground.
 * Ground and flight code are fetched when a length first needs them.
 */
import * as attr from "../../contract/attributes.ts";
import type { Conditions } from "../conditions-store.ts";
import { GroundFile } from "../ground-file.ts";

type Driven = typeof import("../driven.ts");
type Model = typeof import("../conditions-model.ts");

export class OwnDrives {
  private readonly ground: GroundFile;
  private readonly arrived: () => void;
  private code: { readonly driven: Driven; readonly model: Model } | undefined;
  private asked = false;

  /** @param arrived called when what was missing is there, until the signal ends it */
  constructor(arrived: () => void, signal: AbortSignal) {
    this.arrived = arrived;
    this.ground = new GroundFile(arrived, () => {}, signal);
  }

  /**
   * How far a drive and the stroke after it carry; the level carries with plain figures, and until everything is
   * there.
   *
   * @param plain distance and direction only: nothing of wind, air and rise
   */
  now(
    tee: string,
    driveMetres: number,
    nextMetres: number | undefined,
    conditions: Conditions,
    plain: boolean,
  ): { readonly driveMetres: number; readonly nextMetres: number | undefined } {
    const level = { driveMetres, nextMetres };
    const height = document.querySelector(`[${attr.conditions}]:has([${attr.dial}])`)?.getAttribute(attr.height);
    if (plain || !height) return level;
    const ground = this.ground.now();
    if (this.code === undefined) this.fetch();
    if (ground === undefined || this.code === undefined) return level;
    const { driven, model } = this.code;
    const day = model.dayOf(conditions, Number(height));
    if (!day.ok) return level;
    const stroke = (fromMetres: number, levelMetres: number): number =>
      driven.drivenMetres(ground, tee, { fromMetres, levelMetres, driverMetres: driveMetres }, day.day);
    const drive = stroke(0, driveMetres);
    return { driveMetres: drive, nextMetres: nextMetres === undefined ? undefined : stroke(drive, nextMetres) };
  }

  private fetch(): void {
    if (this.asked) return;
    this.asked = true;
    Promise.all([import("../driven.ts"), import("../conditions-model.ts")])
      .then(([driven, model]) => {
        this.code = { driven, model };
        this.arrived();
      })
      .catch(() => {
        this.asked = false;
      });
  }
}
