import type { HeadSize } from "../../../geometry/scalp/headSize"

type Options = Readonly<Record<string, string>>
type Taken = { ok: true; size: HeadSize } | { ok: false; problems: string[] }

export const caliperOptions = {
  length: "mm, brow to the back of the head, with a caliper",
  breadth: "mm, at the widest, with a caliper",
  height: "mm, ear to the top, with a caliper",
}
export const tapeOptions = {
  around: "mm, around the head, with a tape",
  over: "mm, ear to ear over the top, with a tape",
  "front-to-nape": "mm, front hairline to nape over the top, with a tape",
}

/** The size of a head from the options: three measures of a caliper or three of a tape. */
export function headSizeOf(options: Options): Taken {
  const [caliper, tape] = [caliperOptions, tapeOptions].map((names) => measures(names, options))
  const given = [caliper, tape].filter(({ names }) => names.length > 0)
  if (given.length !== 1) return { ok: false, problems: [choose] }
  const [{ missing, values, problems }] = given
  const all = [...missing.map((name) => `--${name} is missing: expected millimetres.`), ...problems]
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

const choose =
  "The size of the head: expected either --length --breadth --height or --around --over --front-to-nape."

function measures(expected: Options, options: Options) {
  const all = Object.keys(expected)
  const names = all.filter((name) => options[name] !== undefined)
  const values = names.map((name) => Number(options[name]))
  const problems = names
    .filter((_, i) => !(values[i] > 0 && Number.isFinite(values[i])))
    .map((name) => `--${name}: expected millimetres above 0, found "${options[name]}".`)
  return { names, missing: all.filter((name) => options[name] === undefined), values, problems }
}
