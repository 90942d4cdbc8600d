import { planJsonSchema } from "../../web/core/document/schema"

/** A plan in which one field is as small, as large, as long or as rare as its schema lets it be. */
export type EndCase = { name: string; raw: unknown }

type Schema = {
  $ref?: string
  properties?: Record<string, Schema>
  items?: Schema
  anyOf?: Schema[]
  oneOf?: Schema[]
  enum?: unknown[]
  const?: unknown
  minimum?: number
  maximum?: number
  exclusiveMinimum?: number
  maxLength?: number
  pattern?: string
  minItems?: number
}

/** Every field that this plan has, at each end of what the published schema allows. */
export function fieldEnds(plan: unknown): EndCase[] {
  const raw: unknown = JSON.parse(JSON.stringify(plan))
  return endsOf(raw, planJsonSchema() as Schema, []).map(({ path, value }) => ({
    name: `${path.join(".")} = ${JSON.stringify(value)?.slice(0, 40)}`,
    raw: withValue(raw, path, value),
  }))
}

type Path = readonly (string | number)[]
type End = { path: Path; value: unknown }

function endsOf(value: unknown, schema: Schema, path: Path): End[] {
  const fitting = [...(schema.anyOf ?? schema.oneOf ?? [])]
  if (fitting.length > 0) {
    const own = fitting.filter((each) => isLike(value, each))
    return own.slice(0, 1).flatMap((each) => endsOf(value, each, path))
  }
  const here = (values: readonly unknown[]) => values.map((end) => ({ path, value: end }))
  if (schema.enum) return here(schema.enum)
  if (typeof value === "number") return here([schema.minimum, schema.maximum].filter(isGiven))
  if (typeof value === "string" && schema.maxLength !== undefined && !schema.pattern)
    return here(["", ...["W", "ж", "🌟"].map((letter) => letter.repeat(schema.maxLength ?? 0))])
  if (Array.isArray(value)) {
    const shorter = value.length > (schema.minItems ?? 0) ? here([value.slice(0, schema.minItems ?? 0)]) : []
    // One of a list stands for the others.
    const inside = schema.items && value.length > 0 ? endsOf(value[0], schema.items, [...path, 0]) : []
    return [...shorter, ...inside]
  }
  if (typeof value !== "object" || value === null) return []
  return Object.entries(value).flatMap(([name, part]) => {
    const field = schema.properties?.[name]
    return field ? endsOf(part, field, [...path, name]) : []
  })
}

const isGiven = (value: unknown) => value !== undefined

/** Whether a value is of a kind of a union: by its fixed field where it has one. */
function isLike(value: unknown, schema: Schema): boolean {
  if (typeof value === "number") return (schema.minimum ?? schema.maximum) !== undefined
  if (typeof value === "string") return (schema.maxLength ?? schema.enum) !== undefined
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false
  const fixed = Object.entries(schema.properties ?? {}).filter(([, field]) => field.const !== undefined)
  return fixed.every(([name, field]) => (value as Record<string, unknown>)[name] === field.const)
}

function withValue(record: unknown, [key, ...rest]: Path, value: unknown): unknown {
  if (key === undefined) return value
  const copy: Record<string | number, unknown> = Array.isArray(record)
    ? ([...record] as unknown as Record<string | number, unknown>)
    : { ...(record as object) }
  copy[key] = withValue(copy[key], rest, value)
  return copy
}
