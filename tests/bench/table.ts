/** One figure of the bench beside the fixed reference measured in the same run. */
export type Row = {
  what: string
  value: number
  unit: string
  limit: number
  reference: string
  referenceValue: number
}

export const median = (values: readonly number[]) => percentile(values, 0.5)

export function percentile(values: readonly number[], share: number) {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]
}

/** The table as DEVELOPERS.md keeps it. */
export function tableOf(rows: readonly Row[]): string {
  const cells = rows.map(({ what, value, unit, limit, reference, referenceValue }) => [
    what,
    `${short(value)} ${unit}`,
    `${short(limit)} ${unit}`,
    reference,
    referenceValue > 0 ? `${short(referenceValue)} ${unit}` : "–",
    referenceValue > 0 ? short(value / referenceValue) : "–",
  ])
  const head = ["what", "measured", "limit", "reference in the same run", "reference", "ratio"]
  return [head, head.map(() => "---"), ...cells].map((line) => `| ${line.join(" | ")} |`).join("\n")
}

const short = (value: number) =>
  value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2)
