import type { CarrierKind, FoilKind } from "../../../geometry/section/section"
import type { FoilPlace } from "../../core/schedule/placesOf"
import type { PieceCode } from "../../core/teaching/teachingPlan"
import type { CommonWords } from "../en/common/common"
import type { teaching as english, TeachingWords } from "../en/teaching"
import type { Tools } from "../tools"
import { stepLabels, stepLines, stepTitles } from "./teachingSteps"

/** A technique as it is told to a class. */
export const teaching: typeof english = (t, common) => ({
  done: {},
  aim: aim(t, common),
  tools: tools(t, common),
  times: times(t),
  checks: checks(t, common),
  faults,
  stepTitles: stepTitles(t, common),
  stepLabels,
  stepLines: stepLines(t, common),
  divide: "Den Kopf abteilen",
})

const places: Record<FoilPlace, string> = {
  hairline: "die Haarlinie",
  top: "den Oberkopf",
  sides: "die Seiten",
  back: "den Hinterkopf",
}

const aim = (t: Tools, common: CommonWords): TeachingWords["aim"] => {
  const things: Record<FoilKind, readonly [one: string, several: string]> = {
    slice: ["Slice", "Slices"],
    weave: ["Weaving", "Weavings"],
    backcomb: ["Toupage", "Toupagen"],
    painted: ["gemalte Partie", "gemalte Partien"],
  }
  const piece = ({ kind, direction, isOne }: PieceCode) => {
    const thing = things[kind][isOne ? 0 : 1]
    return direction === "parallel to hairline"
      ? `${thing} entlang der Haarlinie`
      : `${thing} ${common.directions[direction]}`
  }
  return {
    "nothing-drawn": "Noch ist nichts gezeichnet.",
    brighten: ({ places: where, foils, pieces }) =>
      `${t.capital(t.and(where.map((each) => places[each])))} aufhellen, mit ${t.count(foils, { one: "# Partie", other: "# Partien" })}: ${t.and(pieces.map(piece))}.`,
    leave: ({ names }) => `Auslassen: ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
  }
}

const tools = (t: Tools, common: CommonWords): TeachingWords["tools"] => {
  const carriers: Record<CarrierKind, (count: number) => string> = {
    foil: (count) => t.count(count, { one: "# Folie", other: "# Folien" }),
    board: (count) => t.count(count, { one: "# Board", other: "# Boards" }),
    "open-air": (count) => t.count(count, { one: "# Partie ohne Folie", other: "# Partien ohne Folie" }),
    film: (count) =>
      t.count(count, { one: "# Partie unter Abdeckfolie", other: "# Partien unter Abdeckfolie" }),
  }
  const forms = {
    powder: "Blondierpulver",
    clay: "Clay-Blondierung",
    cream: "Blondiercreme",
    liquid: "flüssige Blondierung",
  }
  return {
    comb: "Stielkamm, Wassersprüher, ein Pinsel pro Schale",
    "section-clips": ({ count }) =>
      `Klammern: ${t.whole(count)}, eine pro Abteilung; am Produkt keine aus Metall`,
    clips: ({ low, high }) =>
      `Klammern: ${t.spread(t.whole(low), t.whole(high))}; am Produkt keine aus Metall`,
    carriers: ({ carrier, count, widthMm, lengthMm }) =>
      carrier === "open-air" || carrier === "film"
        ? carriers[carrier](count)
        : `${carriers[carrier](count)}, ${t.whole(widthMm)} × ${t.mm(lengthMm)}`,
    mix: ({ mix, form, developerVolume, ratio }) =>
      t.capital(
        `${common.mix(mix)}: ${form ? forms[form] : "Produkt nach Herstellerangaben"}, ${t.number(developerVolume)} Vol, ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`,
      ),
    bowls: ({ count }) =>
      t.count(count, {
        one: "# Schale mit lockerem Deckel, nicht aus Metall; Waage",
        other: "# Schalen mit lockeren Deckeln, nicht aus Metall; Waage",
      }),
    keeping: "Handschuhe, Augenschutz, Schürze, Handtuch, feuchte Watte für die Haarlinie",
    minding: ({ piece }) =>
      `Timer; Stift, um zu notieren, wann ${{ foil: "jede Folie", panel: "jede Malpartie", both: "jede Folie und Malpartie" }[piece]} gelegt wird`,
  }
}

const times = (t: Tools): TeachingWords["times"] => ({
  "first-check": ({ firstMin, delicateMin, everyMin, piece }) =>
    `Erste Kontrolle ${t.minutes(firstMin)} nach dem Legen der ${{ foil: "ersten Folie", panel: "ersten Malpartie", both: "ersten Folie oder Malpartie" }[piece]}, ${t.minutes(delicateMin)} an der Haarlinie und bei feinem, porösem oder blondiertem Haar; dann alle ${t.minutes(everyMin)} (übliche Praxis). Herstellerangaben gehen vor.`,
  "max-time": ({ mix, maxMin, isFromSheet, firstCheckMin }) =>
    [
      isFromSheet
        ? `Mischung ${mix}: Höchstzeit ${t.minutes(maxMin)} (laut Produktblatt).`
        : `Mischung ${mix}: Höchstzeit ${t.minutes(maxMin)} (übliche Praxis; kein Produktblatt nennt sie). Zuerst die Herstellerangaben lesen.`,
      ...(firstCheckMin ? [`Erste Kontrolle nach ${t.minutes(firstCheckMin)}.`] : []),
    ].join(" "),
  "each-foil": ({ piece }) =>
    `Die Zeit ${{ foil: "jeder Folie", panel: "jeder Malpartie", both: "jeder Folie und Malpartie" }[piece]} läuft ab der Minute, in der ihr Produkt das Haar zuerst berührt: notieren und jede abnehmen, sobald sie fertig ist.`,
  "learner-pace": ({ lowMin, highMin, foils }) =>
    t.count(foils, {
      one: `Im Lerntempo, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} pro Folie, dauert # Folie ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} (übliche Praxis).`,
      other: `Im Lerntempo, ${t.spread(t.number(lowMin), t.minutes(highMin, 1))} pro Folie, dauern # Folien ${t.spread(t.whole(lowMin * foils), t.minutes(highMin * foils))} (übliche Praxis).`,
    }),
})

const mostNumbered = 8

const checks = (t: Tools, common: CommonWords): TeachingWords["checks"] => ({
  "see-through": ({ slices }) =>
    slices.length > mostNumbered
      ? "Durch jeden feinen Slice sehe ich Licht."
      : t.count(slices.length, {
          one: `Durch Slice ${t.and(slices.map(t.whole))} sehe ich Licht.`,
          other: `Durch die Slices ${t.and(slices.map(t.whole))} sehe ich Licht.`,
        }),
  "even-stitches": ({ stitchMm, gapMm, weave }) =>
    `Meine Stiche sind gleichmäßig: ${t.mm(stitchMm, 1)} genommen, ${t.mm(gapMm, 1)} stehen gelassen, im ganzen Weaving ${t.whole(weave)}.`,
  "cushion-dry": "Das Polster ist trocken; das Produkt beginnt dahinter.",
  "product-start": ({ rootMm }) =>
    `Das Produkt beginnt ${t.mm(rootMm, 1)} oder mehr von der Kopfhaut; auf der Haut ist keines.`,
  "both-faces": "Jede Strähne ist beidseitig bestrichen, ohne trockene Stellen.",
  "left-out-dry": ({ names }) =>
    `Ausgelassen und noch trocken: ${t.and(names.map((name) => name || common.kinds["left-out"]))}.`,
  "sides-match": "Links und rechts stimmen im Spiegel überein.",
  "minutes-noted": ({ piece }) =>
    `Ich habe bei ${{ foil: "jeder Folie", panel: "jeder Malpartie", both: "jeder Folie und Malpartie" }[piece]} die Minute notiert und rechtzeitig kontrolliert.`,
  "foils-sound": "Keine Folie rutscht oder quillt, und keine ist warm.",
})

/** A fault, what it comes from, and what to do about it. */
const faults: TeachingWords["faults"] = {
  "bleeding-root": {
    fault: "Ausbluten am Ansatz",
    cause: "Zu viel Produkt, oder es beginnt direkt an der Folienkante.",
    cure: "Weniger auf den Pinsel; den Falz sauber halten; die Kante vor dem Schließen abwischen.",
  },
  "band-near-root": {
    fault: "Streifen nahe am Ansatz",
    cause: "Das Produkt endet zu früh, oder die Folie ist gerutscht.",
    cure: "Die Folie dort legen, wo der Plan beginnt, und beim Bestreichen andrücken.",
  },
  "dark-spots": {
    fault: "Dunkle Stellen innen",
    cause: "Trockene Stellen: nur eine Seite bestrichen oder das Haar nicht flach ausgebreitet.",
    cure: "Das Haar ausbreiten, beidseitig bestreichen, gegen das Licht halten.",
  },
  "slice-too-deep": {
    fault: "Slice zu tief",
    cause: "Der Stiel hat Haar von hinter dem Scheitel mitgenommen.",
    cure: "Neu scheiteln. Ein feiner Slice ist so dünn, dass Licht durchscheint.",
  },
  "last-foil-dark": {
    fault: "Letzte Folie zu dunkel",
    cause: "Sie wurde lange nach der ersten gelegt und mit ihr abgenommen.",
    cure: "Jede Folie abnehmen, sobald sie fertig ist, nicht alle auf einmal.",
  },
  "last-panel-dark": {
    fault: "Letzte Malpartie zu dunkel",
    cause: "Sie wurde lange nach der ersten gemalt und mit ihr abgenommen.",
    cure: "Jede Malpartie abnehmen, sobald sie fertig ist, nicht alle auf einmal.",
  },
  "foil-slipping": {
    fault: "Folie rutscht",
    cause: "Die Folie ist zu schwer für die Partie, oder der Ansatz war nass vom Produkt.",
    cure: "Eine kürzere Folie, einmal gefaltet; das Produkt etwas tiefer beginnen.",
  },
  "cushion-wet": {
    fault: "Polster nass",
    cause: "Produkt ist an die Toupage gekommen.",
    cure: "Abwischen; hinter dem Polster beginnen, auf glattem Haar.",
  },
}
