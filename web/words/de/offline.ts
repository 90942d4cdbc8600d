import type { offline as english } from "../en/offline"

/** How many plans and techniques of a backup there are, by what becomes of them here. */
type BackupFound = {
  added: number
  beside: number
  same: number
  unread: number
  techniques: number
  cards: number
}

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
  /** All that this browser keeps, in one file. */
  backup: {
    title: "Sicherungskopie",
    none: "Aus diesem Browser wurde noch keine Sicherungskopie gespeichert.",
    save: "Kopie speichern",
    open: "Kopie öffnen …",
    file: "Datei der Sicherungskopie",
    holds:
      "Eine Datei mit allen Plänen, Kundenkarten, Techniken und dem, was Ihr Salon führt. Sie enthält alle Gesundheitsangaben und ist nicht verschlossen: Bewahren Sie sie dort auf, wo nur Sie sie lesen können. Ein Service, der am Stuhl läuft, ist nicht darin.",
    /** What is in a backup that was opened, before it is taken in. */
    found: ({ added, beside, same, unread, techniques, cards }: BackupFound) =>
      [
        `${t.count(added, { one: "# Plan ist hier neu", other: "# Pläne sind hier neu" })}.`,
        ...(same > 0
          ? [`${t.count(same, { one: "# Plan ist schon hier", other: "# Pläne sind schon hier" })}.`]
          : []),
        ...(beside > 0
          ? [
              `${t.count(beside, { one: "# Plan ist anders als der hier und kommt daneben", other: "# Pläne sind anders als die hier und kommen daneben" })}.`,
            ]
          : []),
        ...(unread > 0
          ? [
              `${t.count(unread, { one: "# Plan ist nicht lesbar und wird beiseitegelegt", other: "# Pläne sind nicht lesbar und werden beiseitegelegt" })}.`,
            ]
          : []),
        `${t.count(techniques, { one: "# Technik ist neu", other: "# Techniken sind neu" })}.`,
        ...(cards > 0
          ? [`${t.count(cards, { one: "# Kundenkarte ist neu", other: "# Kundenkarten sind neu" })}.`]
          : []),
        "Was hier ist, wird nicht ersetzt.",
      ].join(" "),
    takeIn: "Übernehmen",
    restored: "Die Sicherungskopie ist übernommen.",
    today: "Die letzte Datensicherung ist von heute.",
    days: ({ days }) =>
      t.count(days, {
        one: "Die letzte Datensicherung ist # Tag alt.",
        other: "Die letzte Datensicherung ist # Tage alt.",
      }),
  },
  licences: "Lizenzen",
})
