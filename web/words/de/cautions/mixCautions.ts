import type { SheetGap } from "../../../core/cautions/rules/cautionCode"
import type { mixCautions as english } from "../../en/cautions/mixCautions"

/** What was found of a mix. */
export const mixCautions: typeof english = (t, named) => {
  const gaps: Record<SheetGap, string> = {
    "longest-time": "welche Höchstzeit gilt",
    "on-scalp": "ob das Produkt an die Kopfhaut darf",
    "alert-test": "ob das Produkt einen Hauttest braucht",
    "pot-life": "welche Verarbeitungszeit gilt",
  }
  return {
    "over-legal-limit": ({ mix, onHeadPercent, mostPercent }) =>
      `${named(mix)} hätte ${t.number(onHeadPercent, 1)} % Peroxid auf dem Kopf; erlaubt sind ${mostPercent} % in der EU und im Vereinigten Königreich. Einen schwächeren Entwickler verwenden.`,
    "hairline-strength": ({ mix, volume, mostVolume }) =>
      `${named(mix)} hat ${t.number(volume)} Vol an der Haarlinie; höchstens ${mostVolume} Vol werden dort verwendet (übliche Praxis). ${mostVolume} Vol oder eine eigene Mischung verwenden.`,
    "strong-developer": ({ mix, volume, usualMostVolume }) =>
      `${named(mix)} hat ${t.number(volume)} Vol, über dem üblichen Höchstwert von ${usualMostVolume}. Zwei sanftere Termine beanspruchen das Haar weniger.`,
    "developer-not-on-sheet": ({ mix, product, volume, listed }) =>
      `${named(mix)}: ${product} ist nicht für ${t.number(volume)} Vol gedacht; die Herstellerangaben nennen ${t.or(listed.map((each) => t.number(each)))} Vol.`,
    "ratio-not-on-sheet": ({ mix, product, parts, low, high }) =>
      low === high
        ? `${named(mix)} ist 1 : ${t.number(parts)}; die Herstellerangaben zu ${product} sagen 1 : ${t.number(low)}.`
        : `${named(mix)} ist 1 : ${t.number(parts)}; die Herstellerangaben zu ${product} sagen 1 : ${t.number(low)} bis 1 : ${t.number(high)}.`,
    "off-scalp-product": ({ mix, product }) =>
      `${named(mix)}: ${product} darf nicht an die Kopfhaut. Weiter von der Kopfhaut beginnen oder ein anderes Produkt wählen.`,
    heat: ({ mix, heatMin, allowedMin }) => {
      const planned = `${t.number(heatMin)} min Wärme geplant`
      if (allowedMin === null)
        return `${named(mix)}: ${planned}; die Herstellerangaben erwähnen keine Wärme. Wärme ausschalten.`
      if (allowedMin === 0)
        return `${named(mix)}: ${planned}; die Herstellerangaben verbieten sie. Wärme ausschalten.`
      return `${named(mix)}: ${planned}; die Herstellerangaben erlauben ${t.number(allowedMin)}. Wärme verkürzen oder ausschalten.`
    },
    "heat-place": ({ mix, forbiddenVolume }) =>
      `${named(mix)}: keine Wärme ab ${forbiddenVolume} Vol, nahe der Haarlinie oder nahe einem toupierten Polster.`,
    "heat-time": ({ mix, heatMin, usualMostMin }) =>
      `${named(mix)}: ${t.number(heatMin)} min Wärme geplant; üblich sind höchstens ${t.number(usualMostMin)} min, ganz gleich, was die Herstellerangaben erlauben.`,
    "open-air-dries": ({ mix }) =>
      `${named(mix)} liegt an der Luft, trocknet dort und wirkt dann nicht mehr. Feucht halten: nach Herstellerangabe abdecken oder nachfeuchten (übliche Praxis).`,
    "stronger-roots": ({ mix, volume, endsMix, endsVolume }) =>
      `${named(mix)}, ${t.number(volume)} Vol, käme auf den Ansatz über der schwächeren Mischung ${endsMix}, ${t.number(endsVolume)} Vol, in den Spitzen. Die Wärme der Kopfhaut hellt den Ansatz schneller auf: Üblich ist dort dieselbe Stärke oder weniger (übliche Praxis).`,
    "no-sheet": ({ mix, product }) =>
      `${named(mix)}: kein Produktblatt für ${product}. Eingeben, was auf der Dose steht. Enthält es Farbstoff, braucht es einen Hauttest.`,
    "sheet-silent": ({ mix, product, gaps: missing }) =>
      `${named(mix)}: Das Produktblatt zu ${product} sagt nicht, ${t.or(missing.map((gap) => gaps[gap]))}. Auf der Dose nachsehen.`,
  }
}
