import { type CommonWords, common } from "../en/common/common"
import { words as british, type Words } from "../en/words"
import type { Tools } from "../tools"

/** American English: only what differs. */
const differs = (_: Tools): Differing<Words> => ({})

/** Names that every message uses. */
const namesThatDiffer = (_: Tools): Differing<CommonWords> => ({})

type Differing<T> = T extends (...given: never[]) => unknown ? T : { [K in keyof T]?: Differing<T[K]> }

export const words = (tools: Tools): Words =>
  joined<Words>(british(tools, joined<CommonWords>(common(tools), namesThatDiffer(tools))), differs(tools))

/** A catalogue with another laid over it. */
function joined<T>(under: T, over: Differing<T>): T {
  if (typeof over !== "object" || over === null) return (over ?? under) as T
  const entries = Object.entries(over).map(([key, value]) => [
    key,
    joined(under[key as keyof T], value as Differing<T[keyof T]>),
  ])
  return { ...under, ...Object.fromEntries(entries) }
}
