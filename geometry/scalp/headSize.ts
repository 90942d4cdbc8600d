import type { CaliperMm, TapeMm } from "./headMeasures"

/** The size of a head as it was taken, mm: with a caliper on the skin, or with a tape over the hair. */
export type HeadSize = ({ kind: "caliper" } & CaliperMm) | ({ kind: "tape" } & TapeMm)
export type HeadMeasureName = keyof CaliperMm | keyof TapeMm

/** The heads of one survey: what is known of a head before a tape is laid round it, mm, and what the tapes read over their hair. */
export type HeadPrior = {
  meanMm: CaliperMm
  sdMm: CaliperMm
  correlation: { lengthBreadth: number; lengthHeight: number; breadthHeight: number }
  /** By how much of itself each tape over hair reads more than on the skin. */
  hairUnderTape: TapeMm
}

/** What the fit of tapes is told. */
export type TapeFigures = {
  /** One entry a survey of like heads; nobody asks which of them a client is like, the tapes say. */
  priors: readonly HeadPrior[]
  /** One standard deviation of a tape about what it should read, mm. */
  tapeErrorMm: TapeMm
}

/** What the fit is told of heads and tapes; presets/client/headSizes.ts says where each figure is from. */
export type HeadFigures = TapeFigures & {
  /** A tape so many standard deviations from what the other two foretell is told. */
  tapeToldBeyond: number
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

/** The measure that does not go with the other two, mm, and its usual span. */
export type HeadSizeFault = { measure: HeadMeasureName; mm: number; least: number; greatest: number }

/** Thrown where no head has such a size; its message is for whoever reads a log, the screen has words of its own. */
export class HeadSizeError extends RangeError {
  readonly fault: HeadSizeFault
  constructor(fault: HeadSizeFault) {
    const { measure, mm, least, greatest } = fault
    super(`${words[measure]}, ${mm} mm, does not go with the other two: usual is ${least} to ${greatest} mm.`)
    this.fault = fault
  }
}

/** Why no head has this size: names the measure that no head has, else the one most out of proportion with the other two, and its usual span. */
export function headSizeFault(size: HeadSize, figures: HeadFigures): HeadSizeError {
  const measures = measuresOf(size).map((measure) => againstUsual(measure, figures))
  const middle = measures.map(({ share }) => share).sort((a, b) => a - b)[1]
  const alone = measuresOfNoHead(size, figures)
  const stray = ({ share }: { share: number }) => Math.abs(Math.log(share / (alone.length > 0 ? 1 : middle)))
  const { name, mm, least, greatest } =
    measures.find(({ mm }) => !(mm > 0)) ?? measures.reduce((a, b) => (stray(b) > stray(a) ? b : a))
  return new HeadSizeError({ measure: name, mm, least, greatest })
}

/**
 * The measures that are not of a head whatever the others are: shorter or longer than the middle of the usual span by more
 * than a head may be stretched. Inches written for centimetres are, and a digit too many or too few.
 */
export const measuresOfNoHead = (size: HeadSize, figures: HeadFigures): readonly HeadMeasureName[] =>
  measuresOf(size)
    .map((measure) => againstUsual(measure, figures))
    .filter(({ share }) => !(share >= figures.axisFactor[0] && share <= figures.axisFactor[1]))
    .map(({ name }) => name)

/** A measure as a share of the middle of its usual span. */
function againstUsual([name, mm]: readonly [HeadMeasureName, number], { usualMm }: HeadFigures) {
  const [least, greatest] = usualMm[name]
  return { name, mm, least, greatest, share: (2 * mm) / (least + greatest) }
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
