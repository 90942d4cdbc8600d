import { visitWeeks } from "../../../../presets/formula/developers"
import type { BlendProblem } from "../../../core/mixing/blend"
import type { GentleReason } from "../../../core/mixing/developer"
import type { PouredBottle } from "../../../core/mixing/pouring"
import type { mixing as english } from "../../en/formula/mixing"
import { say } from "../../say"
import type { Tools } from "../../tools"

type Mixing = ReturnType<typeof english>

/** The mixes of a plan and their bowls: strength, ratio, grams, and why. */
export const mixing: typeof english = (t, { foilCount, foils }) => {
  const weeks = t.spread(t.whole(visitWeeks.range[0]), t.whole(visitWeeks.range[1]))
  return {
    name: (letter) => `Mischung ${letter}`,
    remove: (letter) => `Mischung ${letter} entfernen`,
    add: (letter) => `Mischung ${letter} hinzufügen`,
    product: "Produkt, mit Produktblatt",
    otherProduct: "oder ein anderes, mit Namen",
    developer: "Entwickler",
    vol: ({ volume, percent }) => `${t.number(volume)} Vol, ${t.number(percent, 1)} %`,
    ratio: "Blondierung zu Entwickler, nach Gewicht",
    parts: (parts) => `1 : ${t.number(parts)}`,
    developerParts: "Entwickler auf 1 Teil Blondierung",
    additive: "Zusatz",
    moveFoil: "Folie in andere Mischung verschieben",
    foilIn: ({ foil, piece, kind, place }) => `${t.capital(foils([foil], piece))}: ${kind}, ${place}`,

    consistencies: consistencyWords,
    wants: ({ foils: count, consistency, parts }) =>
      `${foilCount(count)}: ${consistencyWords[consistency]}, 1 : ${t.number(parts)}`,
    mixSo: (parts) => `1 : ${t.number(parts)} mischen`,

    noSheet: "Kein Produktblatt für dieses Produkt: Seine eigenen Herstellerangaben entscheiden.",
    suggested: ({ volume }) => `Vorschlag: ${t.number(volume)} Vol.`,
    use: (volume) => `${t.number(volume)} Vol verwenden`,
    why: developerReasons(t),
    weaker: weakerWords(t),
    visit: ({ visit, fromLevel, toLevel, volume }) =>
      visit === 1
        ? `Heute: von Tonhöhe ${t.number(fromLevel)} bis ${t.number(toLevel)} mit ${t.number(volume)} Vol.`
        : `Termin ${t.whole(visit)}, nach ${weeks} Wochen und wenn das Haar geprüft ist: von Tonhöhe ${t.number(fromLevel)} bis ${t.number(toLevel)} mit ${t.number(volume)} Vol.`,

    visits: {
      title: (count) => t.count(count, { one: "# Termin", other: "# Termine" }),
      today: (level) => `Heute bis Tonhöhe ${t.number(level)} planen, dazu den nächsten Termin`,
      name: (plan) => `${plan}, Termin 2`,
      after: ({ plan, day, toLevel, volume }) =>
        `Termin 2, nach „${plan}“ vom ${t.date(day)}. Zuerst das Haar ansehen und seine Tonhöhe eingeben; Ziel ist Tonhöhe ${t.number(toLevel)} mit höchstens ${t.number(volume)} Vol.`,
      stored: ({ name, day }) =>
        `Termin 2 steht bei Ihren Plänen: ${name}, ab dem ${t.date(day)} (${t.whole(visitWeeks.range[0])} Wochen, übliche Praxis). Die Gesundheitsfragen werden an dem Tag erneut gestellt.`,
      open: "Termin 2 öffnen",
      undo: "Beides rückgängig machen",
      notStored: (why) => `Nichts wurde geändert: Der Plan für Termin 2 wurde nicht gesichert. ${why}`,
      note: ({ toLevel, volume }) =>
        `Nächster Termin, nach ${weeks} Wochen: das Haar prüfen, dann bis Tonhöhe ${t.number(toLevel)} mit ${t.number(volume)} Vol.`,
    },

    suggestions: {
      title: (count) =>
        t.count(count, {
          one: "Eine Mischung, vorgeschlagen aus der Beratung",
          other: "# Mischungen, vorgeschlagen aus der Beratung",
        }),
      use: "Vorschlag verwenden",
      mix: ({ volume, percent, parts, foils: numbers }) =>
        `${t.number(volume)} Vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)}, für ${foils(numbers)}`,
      why: {
        ...developerReasons(t),
        "no-sheet": ({ product }) =>
          `Kein Produktblatt für ${product}: Seine eigenen Herstellerangaben entscheiden.`,
        consistency: ({ consistency }) => `Konsistenz: ${consistencyWords[consistency]}.`,
        joined: "Mengen, die für eine eigene Schale zu klein sind, kommen zu einer anderen Mischung.",
      },
    },

    unused: (letter) => `Noch nutzt keine Folie Mischung ${letter}.`,
    wanted: ({ foils: count, piece, mix, wantedG }) =>
      t.count(count, {
        one: `${foilCount(count, piece)} nutzt Mischung ${mix}: ${t.gramsRange(wantedG)} aufs Haar; die Schale ist nach dem oberen Wert geplant.`,
        other: `${foilCount(count, piece)} nutzen Mischung ${mix}: ${t.gramsRange(wantedG)} aufs Haar; die Schalen sind nach dem oberen Wert geplant.`,
      }),
    mixed: ({ mixedG, wasteG }) =>
      `${t.grams(mixedG)} gemischt, davon bleiben ${t.gramsRange(wasteG)} in Schale und Pinsel oder übrig.`,
    cost: (amount) => `Kosten: ${t.fixed(amount, 2)}.`,
    strength: ({ volume, percent, percentWw, onHeadPercent }) =>
      `${t.number(volume)} Vol wird als ${t.number(percent, 1)} % verkauft (berechnet ${t.number(percentWw)} % nach Gewicht; Etiketten weichen ab); gemischt ${t.number(onHeadPercent, 1)} %.`,

    bowls: {
      title: (count) => (count === 0 ? "Schalen" : t.count(count, { one: "# Schale", other: "# Schalen" })),
      none: "Noch keine Folien. Hier stehen dann ihre Schalen.",
      toPlacement: "Folien zeichnen",
    },
    bowl: {
      when: (minute) => `in Minute ${t.whole(minute)} mischen`,
      foils: (numbers, piece) => t.capital(foils(numbers, piece)),
      lightener: "Blondierung",
      developer: "Entwickler",
      strength: ({ volume, percent, parts }) =>
        `${t.number(volume)} Vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)}`,
      byVolume: (ml) => `Entwickler nach Volumen: ${t.number(ml)} ml`,
      grams: (grams) => `${t.number(grams, 1)} g`,
    },
    line: ({ product, volume, percent, parts, foils: count }) =>
      `${product}, ${t.number(volume)} Vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)}, ${foilCount(count)}`,
    change: "Ändern",
    changeThis: (letter) => `Mischung ${letter} ändern`,
    title: "Mischungen",
    poured: pouringWords(t),
    blend: blendProblems(t),
    additives: {
      "instead-of-developer": ({ grams, name }) =>
        `${t.number(grams, 1)} g ${name}, anstelle von ebenso viel Entwickler: Das Verhältnis bleibt.`,
      "beside-developer": ({ grams, name, restParts }) =>
        `${t.number(grams, 1)} g ${name}, zusätzlich zum Entwickler: 1 g Blondierung auf ${t.number(restParts)} g vom Rest.`,
    },
    problem: mixProblems(t),
    note: {
      "pot-life-assumed": ({ product, minutes }) =>
        `${product} nennt keine Verarbeitungszeit; ${t.minutes(minutes)} angenommen (übliche Praxis).`,
      "foil-outlasts-bowl": ({ foil, minutes }) =>
        `Folie ${foil} zu legen dauert länger als die ${t.minutes(minutes)} Verarbeitungszeit einer Mischung. In zwei teilen.`,
      "off-ratio": ({ scaleStepG, parts, wantedParts }) =>
        `Mit Schritten von ${t.number(scaleStepG)} g kommt die Schale auf 1 : ${t.number(parts)} statt 1 : ${t.number(wantedParts)}. Eine feinere Waage hält das Verhältnis.`,
    },
  }
}

const consistencyWords: Mixing["consistencies"] = {
  thick: "dick",
  creamy: "wie Joghurt",
  loose: "dünn",
}

const levels = (t: Tools, count: number) => t.count(count, { one: "# Stufe", other: "# Stufen" })

const developerReasons = (t: Tools): Mixing["why"] => ({
  "lift-printed": ({ liftLevels, volume, printed }) =>
    `${levels(t, liftLevels)} Aufhellung; das Produktblatt nennt ${t.spread(t.number(printed.low), t.number(printed.high))} für ${t.number(volume)} Vol.`,
  "lift-expected": ({ liftLevels, volume, weakerVolume }) =>
    `${levels(t, liftLevels)} Aufhellung; ${t.number(weakerVolume)} Vol erreichen sie in der Höchstzeit voraussichtlich nicht, ${t.number(volume)} Vol schon.`,
  "not-in-one-visit": ({ liftLevels, volume, visits }) =>
    `Mit ${t.number(volume)} Vol in der Höchstzeit nicht zu erwarten: ${levels(t, liftLevels)} Aufhellung. ${t.whole(visits)} Termine planen und das Haar dazwischen neu beurteilen.`,
  "more-than-one-visit": ({ liftLevels, mostLevels, volume, visits }) =>
    `Mehr als ein Termin: ${levels(t, liftLevels)} Aufhellung; möglich sind bis zu ${t.number(mostLevels)} mit ${t.number(volume)} Vol, dem stärksten Entwickler hier. ${t.whole(visits)} Termine planen und das Haar dazwischen neu beurteilen.`,
  "level-now-unknown": "Tonhöhe jetzt fehlt. Vor der Wahl des Entwicklers eingeben.",
  "target-unknown": "Zieltonhöhe fehlt. Vor der Wahl des Entwicklers eingeben.",
  "no-lift-printed": ({ product }) => `${product} nennt keine Aufhellungsstufen. Von der Dose übernehmen.`,
  "target-beyond-scale": ({ level, lightestLevel }) =>
    `Zieltonhöhe ${t.number(level)} liegt über der Skala. ${t.number(lightestLevel)} oder weniger wählen.`,
  "target-darker": ({ fromLevel, toLevel }) =>
    `Zieltonhöhe ${t.number(toLevel)} ist dunkler als das Haar (${t.number(fromLevel)}). Blondierung kann nicht abdunkeln: eine hellere Tonhöhe oder ein Lowlight wählen.`,
  "at-target": ({ level }) =>
    `Das Haar hat schon Tonhöhe ${t.number(level)}. Es braucht einen Ton, keine Aufhellung.`,
  "no-lift-allowed": ({ product }) =>
    `${product} nennt keine Aufhellung mit einem Entwickler, der hier erlaubt ist. Ein anderes Produkt wählen.`,
})

const gentleWords: Record<GentleReason, string> = {
  hairline: "Haar an der Haarlinie ist fein und hellt zuerst auf",
  fine: "feines Haar hellt früher auf und dehnt sich früher",
  porous: "poröses Haar arbeitet schneller",
  lightened: "schon blondiertes Haar ist poröser",
}

const weakerWords =
  (t: Tools): Mixing["weaker"] =>
  ({ volume, reasons, shortByLevels }) => {
    const why = t.and(reasons.map((reason) => gentleWords[reason]))
    return shortByLevels > 0
      ? `Oder ${t.number(volume)} Vol: ${why}, endet aber ${levels(t, shortByLevels)} vor dem Ziel.`
      : `Oder ${t.number(volume)} Vol: ${why}.`
  }

const blendProblems = (t: Tools): Mixing["blend"] => ({
  "no-bottles": "mindestens eine Flasche eingeben, zum Beispiel 12,3.",
  "bottle-percent": ({ percent }) => `${t.number(percent)} % ist keine Stärke; 0 bis 100 eingeben.`,
  "want-percent": ({ percent }) => `${t.number(percent)} % ist keine Stärke; 0 bis 100 eingeben.`,
  "no-amount": ({ grams }) => `${t.number(grams)} g ist keine Menge; Gramm über 0 eingeben.`,
  "want-too-weak": ({ wantPercent, weakestPercent }) =>
    `${t.number(wantPercent)} % ist schwächer als die schwächste Flasche, ${t.number(weakestPercent)} %; eine schwächere Flasche hinzufügen.`,
  "want-too-strong": ({ wantPercent, strongestPercent }) =>
    `${t.number(wantPercent)} % ist stärker als die stärkste Flasche, ${t.number(strongestPercent)} %; eine geringere Stärke wählen.`,
})

const pouringWords = (t: Tools): Mixing["poured"] => {
  const bottle = ({ volume, percent, grams }: PouredBottle) =>
    `${t.number(grams, 1)} g mit ${t.number(volume)} Vol (${t.number(percent, 1)} %)`
  return {
    poured: ({ bottles }) => `Entwickler nach Gewicht: ${bottles.map(bottle).join(" + ")}.`,
    "not-poured": ({ volume, problem }) =>
      `${t.number(volume)} Vol lässt sich aus Ihren Flaschen nicht mischen: ${say<BlendProblem>(blendProblems(t), problem)}`,
  }
}

const mixProblems = (t: Tools): Mixing["problem"] => {
  const said = ({ product, lightener, developer }: Ratio) =>
    `${product}, Verhältnis ${t.number(lightener)} : ${t.number(developer)}`
  return {
    "ratio-parts": (ratio) =>
      `${said(ratio)}: Teile über 0 eingeben, Blondierung zuerst, zum Beispiel 1 : 2.`,
    "ratio-upside-down": (ratio) =>
      `${said(ratio)}: mehr Blondierung als Entwickler. Blondierung zuerst eingeben, ${t.number(ratio.developer)} : ${t.number(ratio.lightener)}.`,
    "no-strength": ({ product, percent }) =>
      `${product}, Entwickler: ${t.number(percent)} % ist keine Stärke; 3 bis 12 % eingeben.`,
    "scale-step": ({ grams }) =>
      `Waage: ${t.number(grams)} g ist kein Schritt einer Waage; 0,1, 0,5, 1, 2 oder 5 g eingeben.`,
    "foil-grams": ({ foil, lowG, highG }) =>
      `Folie ${foil}: ${t.number(lowG)} bis ${t.number(highG)} g Produkt; Gramm ab 0 eingeben, den kleineren Wert zuerst.`,
    "foil-minutes": ({ foil, minutes }) =>
      `Folie ${foil}: ${t.number(minutes)} Minuten zum Legen; Minuten ab 0 eingeben.`,
  }
}

type Ratio = { product: string; lightener: number; developer: number }
