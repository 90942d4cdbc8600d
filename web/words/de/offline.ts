import type { offline as english } from "../en/offline"

/** The app on this device, the plans kept in it, and newer versions. */
export const offline: typeof english = (t) => ({
  done: {},
  update: {
    ready: "Ein neueres Partline ist bereit.",
    load: "Laden",
    later: "Später",
    refused: "Jetzt nicht: Ein anderes Fenster ist am Stuhl, oder eine Änderung ist noch nicht gesichert.",
  },
  kept: {
    title: "Auf diesem Gerät",
    unknown:
      "Dieser Browser behält Pläne, aber nicht Partline selbst: Es öffnet nur, solange seine Adresse erreichbar ist.",
    keeping: "Partline wird auf dieses Gerät kopiert, um ohne Netz zu öffnen.",
    kept: "Partline öffnet ohne Netz.",
    failed:
      "Partline konnte nicht auf dieses Gerät kopiert werden: Es öffnet nur, solange seine Adresse erreichbar ist.",
  },
  persistence: {
    unknown: "Dieser Browser sagt nicht, ob er die Pläne bei knappem Speicher verschont.",
    granted: "Dieser Browser verschont die Pläne, wenn der Speicher knapp wird.",
    refused:
      "Dieser Browser kann die Pläne löschen, wenn der Speicher knapp wird oder wenn er länger nicht benutzt wurde.",
    ask: "Um Verschonen bitten",
  },
  backup: {
    today: "Die letzte Datensicherung ist von heute.",
    days: ({ days }) =>
      t.count(days, {
        one: "Die letzte Datensicherung ist # Tag alt.",
        other: "Die letzte Datensicherung ist # Tage alt.",
      }),
  },
  licences: "Lizenzen",
})
