import { isFoil, type Section } from "../../../geometry/section/section"
import type { ComparedPair, Comparison } from "../../core/compare/compare"
import { type ComparisonCode, comparisonCodes, differencesBeyond } from "../../core/compare/remarks"
import { sideOf } from "../../core/placement/places"
import type { Words } from "../../words/en/words"
import { say } from "../../words/say"

/** A comparison as it is printed: every measure with its code, and a sentence beside it. */
export function comparisonObject(comparison: Comparison, words: Words) {
  const { pairs, missing, extra, isMirrored, isLaidAnew, noRoom, model, score } = comparison
  return {
    mirrored: isMirrored,
    laidAnew: isLaidAnew,
    noRoom,
    sections: model.length,
    matched: pairs.length,
    missing: missing.map(({ model: section, place }) => ({ order: place, ...sectionObject(section) })),
    extra: extra.map(({ learner, place }) => ({ order: place, ...sectionObject(learner) })),
    criteria: score.map(({ criterion, met, of }) => ({
      criterion,
      name: words.comparing.criteria[criterion],
      met,
      of,
    })),
    rows: pairs.map((pair) => rowObject(pair, words)),
    told: comparisonCodes(comparison).map((code) => ({
      ...code,
      sentence: say<ComparisonCode>(words.comparing.whole, code),
    })),
  }
}

const sectionObject = (section: Section) => ({
  number: isFoil(section) ? section.mapNumber : null,
  kind: section.kind,
  side: sideOf(section),
})

function rowObject(pair: ComparedPair, words: Words) {
  const { model, learner, place, isMirrored, found, met } = pair
  return {
    model: { order: place.model, ...sectionObject(model) },
    learner: { order: place.learner, ...sectionObject(learner) },
    mirrored: isMirrored,
    hairlineMm: found.hairlineMm,
    backMm: found.backMm,
    alongMm: found.alongMm,
    angleDeg: found.angleDeg,
    lengthPercent: 100 * found.lengthShare,
    depthMm: found.depthMm,
    startMm: found.startMm,
    met,
    beyond: differencesBeyond(pair).map((code) => ({ ...code, said: say(words.comparing.differs, code) })),
  }
}
