import type {
  clientCautions as english,
  alertTestFaults as englishFaults,
} from "../../en/cautions/clientCautions"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** What was found of the client, the hair and the tests. */
export const clientCautions: typeof english = (t) => ({
  "under-age": ({ youngestYears }) =>
    `Der Gast ist unter ${youngestYears}: keine Farbe und kein Hauttest (Etikett von Oxidationsfarben; Branchenempfehlung für Blondierung).`,
  "past-reaction": ({ product }) =>
    product === null
      ? "Der Gast hat schon einmal reagiert (auf Farbe oder schwarzes Henna). Nicht färben. Die Ursache kann ärztlich getestet werden."
      : `Der Hauttest mit ${product} hat reagiert. Nicht färben. Die Ursache kann ärztlich getestet werden.`,
  "breathing-reaction":
    "Blondierung hat beim Gast pfeifende Atmung, Husten oder Quaddeln ausgelöst. Nicht in der Nähe des Gastes mischen; an eine Arztpraxis verweisen.",
  "mixer-breathing":
    "Blondierung löst bei der Person, die mischt, Husten, pfeifende Atmung oder Ausschlag aus. Jemand anderes mischt, in einem anderen Raum; an eine Arztpraxis verweisen.",
  "dye-allergy":
    "Allergie gegen Haarfarbe, ihre Inhaltsstoffe oder Blondierung. Nicht färben und keinen Hauttest machen.",
  "scalp-hurt": ({ scalp }) =>
    scalp === "broken"
      ? "Die Kopfhaut ist verletzt. Keine Behandlung, bis sie verheilt ist."
      : "Die Kopfhaut ist gereizt. Keine Behandlung, bis sie verheilt ist.",
  "scalp-today":
    "Sonnenbrand, Schnitte, Stiche oder Bisse, Läuse oder Infektion an der Kopfhaut. Keine Behandlung, bis sie frei davon ist.",
  "sensitive-scalp":
    "Die Kopfhaut ist empfindlich. Laut Etikett nicht färben: warten oder ärztlichen Rat holen.",
  "face-rash": "Ausschlag im Gesicht. Laut Etikett nicht färben: warten oder ärztlichen Rat holen.",
  "alert-test-wanting": ({ fault }) => say(alertTestFaults(t), fault),
  "toner-not-chosen": ({ wanting, testHours }) =>
    wanting.length === 2
      ? `Noch kein Toner und kein Ansatzton gewählt. Mit Entwickler gemischt braucht jeder einen eigenen Hauttest, frühestens ${testHours} Stunden später ohne Reaktion abgelesen.`
      : wanting[0] === "toner"
        ? `Noch kein Toner gewählt. Mit Entwickler gemischt braucht er einen eigenen Hauttest, frühestens ${testHours} Stunden später ohne Reaktion abgelesen.`
        : `Noch kein Ansatzton gewählt. Mit Entwickler gemischt braucht er einen eigenen Hauttest, frühestens ${testHours} Stunden später ohne Reaktion abgelesen.`,
  expecting:
    "Schwanger oder stillend: zuerst mit der Arztpraxis oder Hebamme des Gastes abklären, sonst ablehnen.",
  "scalp-condition":
    "Erkrankung der Kopfhaut oder kürzliche Operation daran: zuerst mit der Arztpraxis des Gastes abklären, sonst ablehnen.",
  chemotherapy:
    "Chemotherapie oder Bestrahlung, jetzt oder kürzlich: zuerst mit der Arztpraxis des Gastes abklären, sonst ablehnen.",
  asthma:
    "Asthma: Ein Hauttest ohne Reaktion sagt nichts über Blondierung. Zuerst die Arztpraxis des Gastes fragen. Dann lüften, Staub meiden, das Asthmaspray griffbereit halten und beim ersten Husten aufhören.",
  medicines:
    "Medikament oder Krankheit mit Wirkung auf Haar, Haut, Wundheilung oder mit Ohnmacht: zuerst mit Apotheke oder Arztpraxis des Gastes abklären, sonst ablehnen.",
  "other-allergy":
    "Der Gast hat eine Allergie. Mit den Inhaltsstoffen jedes Produkts und der Handschuhe vergleichen. Steht der Stoff dort oder ist die Ursache unbekannt: ablehnen.",
  "card-dye-allergy": ({ to }) =>
    `Auf der Karte: ${allergyTo(t, to)}, gilt wie eine Allergie gegen Haarfarbe. Heute bestätigen. Ein Nein hebt sie nicht auf: ist die Karte falsch, die Karte berichtigen.`,
  "card-allergy": ({ to }) =>
    `Auf der Karte: ${allergyTo(t, to)}. Heute bestätigen und jedes Produkt und jeden Handschuh prüfen. Ein Nein hebt sie nicht auf: ist die Karte falsch, die Karte berichtigen.`,
  "black-henna":
    "Der Gast hatte ein Tattoo mit schwarzem Henna: Es kann eine Allergie gegen Haarfarbe auslösen. Nur ein Hauttest, der nach dem Tattoo aufgetragen wurde, zählt.",
  "hairline-loss": "Haarausfall an der Haarlinie. Dort einen Streifen auslassen; Zug vermeiden.",
  eyes: "Kontaktlinsen vor dem Mischen heraus. Produkt deutlich von Brauen und Wimpern fernhalten.",
  "metallic-salts":
    "Metallsalze oder Mischhenna im Haar: Mit Peroxid kann es heiß werden, rauchen und brechen. Nicht blondieren. Abschneiden oder warten, bis es herausgewachsen ist.",
  henna:
    "Henna im Haar, Inhalt unbekannt. Zuerst abgeschnittenes Haar in der Mischung testen: Bei Hitze, Blasen oder Farbumschlag nicht weitermachen.",
  "strand-test-failed": ({ product }) =>
    `Die Probesträhne mit ${product} hat nicht bestanden: Das Haar ist gebrochen oder hat seine Festigkeit verloren. Nicht blondieren.`,
  "over-stretched":
    "Das Haar bleibt nass gedehnt oder reißt. Nicht blondieren. Schneiden, pflegen und an einem anderen Tag neu testen.",
  "recent-relaxer":
    "Kürzlich chemisch geglättet oder Dauerwelle. Ablehnen, oder warten und nach einer Probesträhne entscheiden.",
  "unknown-content":
    "Heimcoloration oder Kupfer aus Brunnen- oder Poolwasser: Inhalt unbekannt. Zuerst abgeschnittenes Haar in der Mischung testen: Bei Hitze, Blasen oder Farbumschlag nicht weitermachen.",
  extensions:
    "Extensions oder Bondings im Haar. Blondierung von Bondings, Tapes und Metallringen fernhalten.",
  "strand-test-first":
    "Chemisch behandeltes Haar und keine Probesträhne eingetragen. Zuerst eine Strähne mit dieser Mischung testen.",
  overlap:
    "Ein Teil des Haars ist schon blondiert. Nicht überlappen, außer die Herstellerangaben erlauben es; Spitzen schützen; nach 5 Minuten kontrollieren.",
  "coated-twice": ({ foils, piece, fromMm, toMm }) =>
    `${pieces(t).names(foils, piece)} ${t.count(foils.length, { one: "käme", other: "kämen" })} auf schon blondiertes Haar, ${t.whole(fromMm)} bis ${t.mm(toMm)} von der Kopfhaut. Nur den Nachwuchs einstreichen oder auslassen.`,
  porous:
    "Poröses Haar hellt schnell auf und nimmt Toner schnell an. Erste Kontrolle nach 5 Minuten; zuletzt tönen.",
})

/** Why a patch test does not count today. */
export const alertTestFaults: typeof englishFaults = (t) => ({
  "no-test": ({ product, hours }) =>
    `Kein Hauttest mit ${product} eingetragen. Auftragen und nach ${hours} Stunden ablesen.`,
  "no-time": ({ product }) => `Hauttest mit ${product}: Datum und Uhrzeit des Auftragens fehlen.`,
  "in-future": ({ product }) => `Hauttest mit ${product}: Das Datum des Auftragens liegt in der Zukunft.`,
  "too-young": ({ product, hoursOn, hours, readFrom }) =>
    `Hauttest mit ${product}: erst ${hoursOn} von ${hours} Stunden. Ablesen ab ${t.weekday(readFrom)}, ${readFrom.slice(11)} Uhr.`,
  unread: ({ product }) =>
    `Hauttest mit ${product}: noch nicht abgelesen. Die Haut ansehen und eintragen, was Sie sehen.`,
  reacted: ({ product }) => `Hauttest mit ${product}: Die Haut hat reagiert. Nicht färben.`,
  "reader-missing": ({ product }) =>
    `Hauttest mit ${product}: eintragen, wann und von wem er abgelesen wurde.`,
  "read-in-future": ({ product }) => `Hauttest mit ${product}: Das Datum des Ablesens liegt in der Zukunft.`,
  "read-early": ({ product, hours }) =>
    `Hauttest mit ${product}: abgelesen, bevor ${hours} Stunden vorbei waren. Die Haut noch einmal ansehen.`,
  "out-of-date": ({ product, lastDay }) =>
    `Hauttest mit ${product}: gültig bis ${t.date(lastDay)}. Einen neuen auftragen.`,
  "other-visit": ({ product, madeFor }) =>
    madeFor === null
      ? `Hauttest mit ${product}: für einen anderen Termin gemacht. Einen neuen auftragen oder eintragen, wie lange der Hersteller ihn gelten lässt.`
      : `Hauttest mit ${product}: für den Termin am ${t.date(madeFor)} gemacht. Einen neuen auftragen oder eintragen, wie lange der Hersteller ihn gelten lässt.`,
  "too-old": ({ product, appliedOn, mostDays }) =>
    `Hauttest mit ${product}: am ${t.date(appliedOn)} aufgetragen, mehr als ${mostDays} Tage vor dem Termin. Einen neuen auftragen oder eintragen, wie lange der Hersteller ihn gelten lässt.`,
  "before-henna": ({ product, tattooOn }) =>
    `Hauttest mit ${product}: vor dem Tattoo mit schwarzem Henna vom ${t.date(tattooOn)} aufgetragen. Einen neuen auftragen.`,
  "henna-undated": ({ product }) =>
    `Hauttest mit ${product}: eintragen, wann das Tattoo mit schwarzem Henna gemacht wurde. Nur ein danach aufgetragener Test zählt.`,
  "changed-since": ({ product }) =>
    `Hauttest mit ${product}: Seither hat sich etwas geändert. Einen neuen auftragen.`,
})

/** An allergy nobody wrote the cause of is named all the same. */
const allergyTo = (t: Tools, to: readonly string[]) =>
  `Allergie gegen ${t.and(to.map((what) => what.trim() || "Unbekanntes"))}`
