import type { Piece } from "../../../core/kinds/kindRecord"
import type { LiftsFirst } from "../../../core/lift/liftsFirst"
import type { clashes as english } from "../../en/timing/clashes"
import { say } from "../../say"
import { pieces } from "../common/pieces"

type Clashes = ReturnType<typeof english>

/** What the clock finds: why there is none, what was assumed, what clashes, and what mends it. */
export const clashes: typeof english = (t) => {
  const min = (minutes: number) => t.minutes(minutes, 1)
  const numbers = (foils: readonly number[]) => t.runs(foils, (from, to) => `${from} bis ${to}`)
  const { word, names } = pieces(t)
  const foils = (list: readonly number[], piece?: Piece) => `${word(list.length, piece)} ${numbers(list)}`
  const one = (foil: number, piece?: Piece) => names([foil], piece)
  const others = (count: number) =>
    count === 0 ? "" : t.count(count, { one: " (und # weitere)", other: " (und # weitere)" })

  const orOverride = "Wärme ausschalten oder diesen Stopp schriftlich übergehen."
  const heat: Clashes["heat"] = {
    "too-warm": ({ ceilingC, warmthC }) =>
      `Keine Wärme: Über ${t.number(ceilingC)} °C wird keine Aufhellung berechnet, und ${t.number(warmthC)} °C sind eingegeben. Kühler einstellen.`,
    "not-on-sheet": "Keine Wärme: Das Produktblatt erlaubt sie nicht. Wärme ausschalten.",
    "strong-mix": ({ mix, volume }) =>
      `Keine Wärme: Mischung ${mix} ist mit ${t.number(volume)} Vol gemacht. ${orOverride}`,
    "at-hairline": `Keine Wärme: An der Haarlinie liegen Folien. ${orOverride}`,
    cushion: `Keine Wärme: Ein toupiertes Polster liegt nahe am Ansatz. ${orOverride}`,
    "longer-than-usual": ({ usualMostMin, askedMin }) =>
      `Wärme dauert üblicherweise höchstens ${min(usualMostMin)}: ${min(askedMin)} eingegeben. ${orOverride}`,
    "too-long": ({ mostMin, askedMin }) =>
      `Das Produktblatt erlaubt höchstens ${min(mostMin)} Wärme: ${min(askedMin)} eingegeben. Wärme verkürzen.`,
    "no-minutes": "Wärme muss länger als 0 Minuten dauern.",
  }

  const first: Record<LiftsFirst, string> = {
    hairline: "Haar an der Haarlinie hellt zuerst auf: voraussichtlich fertig",
    fine: "Feines Haar hellt früher auf: voraussichtlich fertig",
  }

  return {
    problems: {
      "no-foils": "Es gibt keine Folien für die Uhr: zuerst eine zeichnen.",
      hands: ({ count }) => `Eine oder zwei Personen lassen sich planen, nicht ${count}.`,
      "pace-share": "Das Tempo einer Person muss über 0 liegen.",
      "break-backwards": "Eine Pause muss nach ihrem Beginn enden.",
      "foil-twice": ({ foil }) => `Folie ${foil} steht zweimal im Plan.`,
      "foil-bare": ({ foil }) =>
        `Folie ${foil}: Nichts wird bestrichen; das Produkt näher an der Kopfhaut beginnen oder mehr von der Strähne bestreichen.`,
      "foil-pace": ({ foil, minutes }) =>
        `Folie ${foil}: Das Tempo ist ${t.number(minutes)}; Minuten pro Folie über 0 eingeben.`,
      "foil-limit": ({ foil }) => `Folie ${foil}: Die Höchstzeit des Produkts muss über 0 Minuten liegen.`,
      "roots-after-limit": ({ foil, afterMin, limitMin }) =>
        `Folie ${foil}: Der Ansatz käme nach ${t.minutes(afterMin)}, wenn die Spitzen bei ihrer Höchstzeit von ${t.minutes(limitMin)} sind. Den Ansatz früher auftragen.`,
      "foil-mix": ({ foil, mix }) => `Folie ${foil}: Es gibt keine Mischung ${mix}.`,
      "foil-ready": ({ foil, mix }) =>
        `Folie ${foil}: Mit Mischung ${mix} ist nicht bekannt, wann sie fertig sein kann.`,
      "no-bowl": ({ foil, mix }) => `Folie ${foil}: Keine Schale von Mischung ${mix} ist für sie da.`,
      "bowl-empty": ({ mix }) => `Mischung ${mix}: Eine Schale muss mehr als 0 g enthalten.`,
      "bowl-pot-life": ({ mix }) => `Mischung ${mix}: Die Verarbeitungszeit muss länger als 0 Minuten sein.`,
      "checks-apart": "Zwischen Kontrollen müssen mehr als 0 Minuten liegen.",
      "from-off-scale": ({ level, darkest, lightest }) =>
        `Tonhöhe jetzt ist ${t.number(level)}: Die Skala reicht von ${darkest} bis ${lightest}.`,
      "to-off-scale": ({ level, darkest, lightest }) =>
        `Zieltonhöhe ist ${t.number(level)}: Die Skala reicht von ${darkest} bis ${lightest}.`,
      "not-lighter": "Die Zieltonhöhe muss heller sein als die Tonhöhe jetzt.",
    },

    assumed: {
      "lift-by-sheet": ({ fromLevel, toLevel }) =>
        `Von Tonhöhe ${t.number(fromLevel)} bis ${t.number(toLevel)}: Die Zeiten sind aus der Aufhellung auf dem Produktblatt geschätzt.`,
      "lift-by-strand": ({ fromLevel, toLevel }) =>
        `Von Tonhöhe ${t.number(fromLevel)} bis ${t.number(toLevel)}: Die Zeiten sind aus Produktblatt und Probesträhne geschätzt.`,
      "no-levels": ({ low, high }) =>
        `Keine Tonhöhen eingegeben, daher typische Zeiten (${t.spread(t.number(low), t.minutes(high))}, eine Annahme). Die Strähne kontrollieren.`,
      "lifts-first": ({ hair, low, high, lookMin }) =>
        `${first[hair]} nach ${t.spread(t.number(low * 100), t.percent(high))} der üblichen Minuten, eine Annahme. Erste Kontrolle ${t.minutes(lookMin)} nach dem Legen.`,
      "roots-wait": ({ foil, byMin, others }) =>
        `Ansatz von Folie ${foil}${others > 0 ? ` und ${t.whole(others)} weiteren` : ""}: Die Hände kommen bis zu ${t.minutes(byMin)} später dazu als eingestellt.`,
      "learnt-pace": "Tempo am Stuhl gemessen.",
      "heat-left-out": ({ why }) => `${say(heat, why)} Die Uhr rechnet ohne die Wärme.`,
      "heat-counted": ({ minutes, low, high }) =>
        `Die ${min(minutes)} Wärme zählen als ${t.spread(t.number(low, 1), t.number(high, 1))}-mal so schnell wie ohne: kontrollieren, sobald die Wärme aus ist.`,
      "no-sheet": ({ mix, product, limitMin }) =>
        `Mischung ${mix}: kein Produktblatt für „${product}“; als Höchstzeit gelten ${min(limitMin)}.`,
    },
    alwaysCheck:
      "Früh und oft kontrollieren; abnehmen, was fertig ist. Nie die Höchstzeit des Herstellers überschreiten.",

    heat,

    clashTitle: (count) =>
      count === 0
        ? "Keine Konflikte im Zeitplan"
        : t.count(count, { one: "# Konflikt", other: "# Konflikte" }),
    noFix: "Partline hat dafür keine Lösung: den Plan ändern.",
    clashes: {
      "over-run": ({ foil, overMin, limitMin, others: more, piece }) =>
        `${one(foil, piece)} wäre ${min(overMin)} über ihrer Höchstzeit von ${min(limitMin)}, bevor alle fertig sind${others(more)}.`,
      "under-processed": ({ foil, onMin, needsMin, others: more, piece }) =>
        needsMin === null
          ? `${one(foil, piece)} würde ${min(onMin)} einwirken und wird voraussichtlich nicht fertig${others(more)}.`
          : `${one(foil, piece)} würde ${min(onMin)} einwirken und braucht voraussichtlich ${min(needsMin)}${others(more)}.`,
      "hairline-ahead": ({ waitMin }) =>
        waitMin === null
          ? "Die Haarlinie wäre lange vor dem Hinterkopf fertig und bliebe bis zum gemeinsamen Ausspülen drin."
          : `Die Haarlinie wäre ${min(waitMin)} vor dem Hinterkopf fertig und bliebe bis zum gemeinsamen Ausspülen drin.`,
      "pot-life": ({ mix, agedMin, potLifeMin }) =>
        `Eine Schale von Mischung ${mix} wäre ${min(agedMin)} nach dem Mischen noch in Gebrauch; die Verarbeitungszeit ist ${min(potLifeMin)}.`,
      booking: ({ chairMin: { low, mid, high }, bookingMin }) =>
        `Geschätzt ${t.minutes(mid)} (${t.spread(t.whole(low), t.whole(high))}); gebucht sind ${t.minutes(bookingMin)}.`,
    },

    fixes: {
      "each-off": ({ piece }) => `Jede ${word(1, piece)} abnehmen, sobald sie fertig ist`,
      reorder: ({ piece }) => `${word(2, piece)} in anderer Reihenfolge legen, die langsamste zuerst`,
      "weaker-early": ({ count, piece }) =>
        t.count(count, {
          one: `Schwächerer Entwickler für die erste ${word(1, piece)}`,
          other: `Schwächerer Entwickler für die ersten # ${word(2, piece)}`,
        }),
      "order-and-strength": ({ count, piece }) =>
        t.count(count, {
          one: `Andere Reihenfolge und schwächerer Entwickler für die erste ${word(1, piece)}`,
          other: `Andere Reihenfolge und schwächerer Entwickler für die ersten # ${word(2, piece)}`,
        }),
      "closest-together": ({ piece }) => `Alle ${word(2, piece)} möglichst gleichzeitig ans Ziel bringen`,
      "fresh-bowl": ({ mixes, foils: at, piece }) =>
        `Frische Schale mischen, Mischung ${t.and(mixes)}, bei ${foils(at, piece)}`,
      "second-colourist": "Mit Assistenz arbeiten",
      "no-drying": ({ savesMin }) => `Trocknen weglassen (${min(savesMin)})`,
      "later-end": ({ bookingMin, byMin }) =>
        `${t.minutes(bookingMin)} buchen: Ende ${t.minutes(byMin)} später`,
      "fewer-foils": ({ foils: list, piece }) =>
        t.count(list.length, {
          one: `${word(1, piece)} ${numbers(list)} weglassen`,
          other: `# ${word(2, piece)} weglassen, auf beide Seiten verteilt: ${numbers(list)}`,
        }),
      "another-day": ({ foils: list, piece }) =>
        t.count(list.length, {
          one: `${word(1, piece)} ${numbers(list)} auf einen anderen Tag legen`,
          other: `# ${word(2, piece)} auf einen anderen Tag legen, auf beide Seiten verteilt: ${numbers(list)}`,
        }),
    },

    search: {
      working: "Lösungen werden gesucht",
      stop: "Stopp",
      stopped: "Die Suche wurde gestoppt.",
      failed: "Die Suche nach Lösungen ist nicht gestartet.",
      again: "Erneut suchen",
    },
    closest: ({ nowMin, thenMin }, piece) =>
      `Die ${word(2, piece)} werden voraussichtlich über ${t.minutes(nowMin)} verteilt fertig; in anderer Reihenfolge oder mit schwächerem Entwickler zuerst über ${t.minutes(thenMin)}.`,

    setAside: {
      foils,
      another: ({ foils: list, plan }) =>
        `Für einen anderen Tag: ${foils(list)}. Nicht in der Mischung, der Uhr oder der gedruckten Karte. Als eigener Termin kommen sie in den Plan „${plan}“; Rückgängig holt sie hierher zurück und lässt jenen Plan, wo er ist.`,
      /** The plan that they go to. */
      planName: (plan) => `${plan}, anderer Tag`,
      bringBack: "Heute doch machen",
      ownVisit: "Als eigenen Termin planen",
      notMoved: (why) => `Die Folien bleiben hier: Ihr eigener Plan wurde nicht gesichert. ${why}`,
      moved: (plan) => `Die Folien für einen anderen Tag sind jetzt in „${plan}“, unter „Pläne“.`,
      open: "Diesen Plan öffnen",
      notOpened: (why) => `Dieser Plan ließ sich nicht öffnen: ${why}`,
      fresh: (list) => `Eine frische Schale wird bei ${foils(list)} gemischt.`,
      usualBowls: "Schalen wie üblich aufteilen",
      damp: "Das Haar wird nicht am Stuhl getrocknet.",
      dry: "Doch trocknen",
    },
  }
}
