/** Keeping the guide on a device, in German. */
import type { KeepWords } from "../islands/keep/words.ts";

export const germanKeep: KeepWords = {
  keep: "Platzführer auf diesem Handy speichern",
  before: "Benötigt {size}. Danach öffnet sich jede Seite und jeder Plan auch ohne Netz.",
  keeping: "{done} von {size} sind da",
  stop: "Abbrechen",
  kept: "Der Platzführer ist auf diesem Gerät gespeichert ({size}) und öffnet sich auch ohne Netz.",
  newer: "Der Club hat seinen Platzführer geändert. Die Änderung benötigt {size}.",
  update: "Änderung laden",
  stale: "Die neue Fassung ist da. Diese Seite zeigt noch die alte.",
  reload: "Neue Fassung zeigen",
  remove: "Von diesem Gerät löschen",
  removed: "Gelöscht. Der Platzführer braucht wieder ein Netz.",
  again: "Noch einmal versuchen",
  megabytes: "{number}\u00a0MB",
  faults: {
    network: "Die Verbindung ist abgebrochen, bevor alles da war. Was schon geladen ist, bleibt für den nächsten Versuch erhalten.",
    changed: "Was ankam, ist nicht der Platzführer, wie ihn der Club erstellt hat: Vielleicht wurde er gerade geändert. Versuchen Sie es in ein paar Minuten noch einmal.",
    full: "Auf diesem Gerät ist nicht genug Platz. Der Platzführer benötigt {size}.",
    refused: "Dieser Browser lässt nicht zu, dass der Platzführer etwas speichert, wie in einem privaten Fenster.",
    unsupported: "Dieser Browser kann den Platzführer nicht speichern, oder dessen Adresse beginnt nicht mit https.",
  },
};
