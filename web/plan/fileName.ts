import type { Plan } from "./schema"

/** A file name that every system takes, such as "soft-face-frame-2026-03-09.partline.json". */
export function fileName({ name, date }: Pick<Plan, "name" | "date">, ending: string): string {
  const words = name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, "-")
  const short = [...words]
    .slice(0, 60)
    .join("")
    .replace(/^-+|-+$/g, "")
  return `${short || "plan"}-${date}.${ending}`
}
