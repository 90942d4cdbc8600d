import type { KeptThing } from "../../../core/fields/notKept"
import type { notKept as english } from "../../en/plans/notKept"
import { problems } from "../problems/problems"

/** Why a thing could not be kept in the browser, and what to do. */
export const notKept: typeof english = (t, names) => ({
  "changed-elsewhere":
    "Dieser Plan wurde in einem anderen Tab oder Fenster geändert. Nichts wurde überschrieben: Ihren als Kopie sichern oder den anderen wieder öffnen.",
  "removed-elsewhere":
    "Dieser Plan wurde in einem anderen Tab oder Fenster gelöscht. Ihren als Kopie sichern, wenn Sie ihn noch brauchen.",
  "card-changed-elsewhere":
    "Diese Karte wurde in einem anderen Tab oder Fenster geändert. Nichts wurde überschrieben: Sie sehen sie, wie sie jetzt ist. Ihre Änderung bitte noch einmal eingeben.",
  "merged-too-long":
    "Zusammen sind die beiden Karten länger, als eine Karte sein kann. Zuerst eine Notiz kürzen.",
  "service-running": "Am Stuhl dieses Plans läuft eine Behandlung. Sie beenden, bevor Sie den Plan löschen.",
  blocked: ({ what }) =>
    `Ein anderes Fenster mit einem älteren Partline ist offen. Es schließen oder ${things[what]} in einer Datei sichern.`,
  full: ({ what }) =>
    `Der Speicher des Browsers ist voll. ${t.capital(things[what])} in einer Datei sichern, dann nicht mehr benötigte Pläne löschen.`,
  "newer-shelf": ({ what }) =>
    `Ein neueres Partline hat den Speicher dieses Browsers benutzt. ${t.capital(things[what])} in einer Datei sichern und die Seite neu laden.`,
  "private-window": ({ what }) =>
    `Private Fenster sichern nichts. Vor dem Schließen ${things[what]} in einer Datei sichern.`,
  "refused-by-browser": ({ what, error }) =>
    error
      ? `Der Browser konnte ${things[what]} nicht sichern (${error}). In einer Datei sichern und die Seite neu laden.`
      : `Der Browser konnte ${things[what]} nicht sichern. In einer Datei sichern und die Seite neu laden.`,
  "not-in-order": ({ what, problem }) =>
    `Nicht gesichert: ${things[what]}. Nochmaliges Lesen ist nicht möglich. ${problems(t, names).sentence(problem)}`,
  unreadable: ({ problem }) => problems(t, names).sentence(problem),
  "salon-unreadable":
    "Ein Teil der gespeicherten Daten des Salons ist nicht lesbar. Bei der nächsten Änderung wird er beiseitegelegt; der Rest bleibt.",
  "keeper-missing":
    "Der Teil von Partline, der sichert, konnte nicht geladen werden. Den Plan in einer Datei sichern, dann die Seite neu laden.",
})

/** In the accusative, for the verb of saving. */
const things: Record<KeptThing, string> = {
  plan: "den Plan",
  technique: "die Technik",
  salon: "die Daten des Salons",
  service: "die Behandlung",
  card: "die Kundenkarte",
}
