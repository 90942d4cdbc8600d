import type { CaliperMm, TapeMm } from "./headMeasures"

/** The size of a head as it was taken, mm: with a caliper on the skin, or with a tape over the hair. */
export type HeadSize = ({ kind: "caliper" } & CaliperMm) | ({ kind: "tape" } & TapeMm)
export type HeadMeasureName = keyof CaliperMm | keyof TapeMm

/** What the fit is told of heads and tapes; presets/headSizes.ts says where each figure is from. */
export type HeadFigures = {
  /** By how much of itself a tape over hair reads more than on the skin. */
  hairUnderTape: number
  /** Usual least and greatest of each measure as it is taken, mm. */
  usualMm: Record<HeadMeasureName, readonly [least: number, greatest: number]>
  /** Least and greatest factor on an axis of the unscaled head that still makes a head. */
  axisFactor: readonly [least: number, greatest: number]
}

const words: Record<HeadMeasureName, string> = {
  lengthMm: "Head length",
  breadthMm: "Head breadth",
  heightMm: "Height from ear to top",
  aroundMm: "Around the head",
  overMm: "Ear to ear over the top",
  frontToNapeMm: "Front hairline to nape",
}

/** Why no head has this size: names the measure most out of proportion with the other two, and its usual span. */
export function headSizeFault(size: HeadSize, { usualMm }: HeadFigures): RangeError {
  const measures = measuresOf(size).map(([name, mm]) => {
    const [least, greatest] = usualMm[name]
    return { name, mm, least, greatest, share: mm / (least + greatest) }
  })
  const middle = measures.map(({ share }) => share).sort((a, b) => a - b)[1]
  const stray = ({ share }: { share: number }) => Math.abs(Math.log(share / middle))
  const { name, mm, least, greatest } =
    measures.find(({ mm }) => !(mm > 0)) ?? measures.reduce((a, b) => (stray(b) > stray(a) ? b : a))
  return new RangeError(
    `${words[name]}, ${mm} mm, does not go with the other two: usual is ${least} to ${greatest} mm.`,
  )
}

const measuresOf = (size: HeadSize): readonly (readonly [HeadMeasureName, number])[] =>
  size.kind === "caliper"
    ? [
        ["lengthMm", size.lengthMm],
        ["breadthMm", size.breadthMm],
        ["heightMm", size.heightMm],
      ]
    : [
        ["aroundMm", size.aroundMm],
        ["overMm", size.overMm],
        ["frontToNapeMm", size.frontToNapeMm],
      ]
