import type { HeadSize } from "../../../geometry/scalp/headSize"
import type { ArgumentProblem } from "../../core/command/argumentProblem"

type Options = Readonly<Record<string, string>>
type Taken = { ok: true; size: HeadSize } | { ok: false; problems: ArgumentProblem[] }

export const caliperOptions = ["length", "breadth", "height"] as const
export const tapeOptions = ["around", "over", "front-to-nape"] as const

/** The size of a head from the options: three measures of a caliper or three of a tape. */
export function headSizeOf(options: Options): Taken {
  const [caliper, tape] = [caliperOptions, tapeOptions].map((names) => measures(names, options))
  const given = [caliper, tape].filter(({ names }) => names.length > 0)
  if (given.length !== 1) return { ok: false, problems: [{ code: "head-choose" }] }
  const [{ missing, values, problems }] = given
  const all: ArgumentProblem[] = [
    ...missing.map((option) => ({ code: "measure-missing" as const, option })),
    ...problems,
  ]
  if (all.length > 0) return { ok: false, problems: all }
  const [first, second, third] = values
  return {
    ok: true,
    size:
      caliper.names.length > 0
        ? { kind: "caliper", lengthMm: first, breadthMm: second, heightMm: third }
        : { kind: "tape", aroundMm: first, overMm: second, frontToNapeMm: third },
  }
}

function measures(all: readonly string[], options: Options) {
  const names = all.filter((name) => options[name] !== undefined)
  const values = names.map((name) => Number(options[name]))
  const problems = names
    .filter((_, i) => !(values[i] > 0 && Number.isFinite(values[i])))
    .map((option) => ({ code: "measure-unusable" as const, option, found: options[option] }))
  return { names, missing: all.filter((name) => options[name] === undefined), values, problems }
}
