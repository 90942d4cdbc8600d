/** Why a plan could not be kept in the browser, and what to do, as one sentence for the screen. */
export const changedElsewhere =
  "This plan was changed in another tab or window. Nothing here was written over it: keep yours as a copy, or open the other one again."

export const removedElsewhere =
  "This plan was taken off the shelf in another tab or window. Keep yours as a copy if you still need it."

export function whyNotKept(error: unknown, what = "plan"): string {
  const name = error instanceof Error || error instanceof DOMException ? error.name : ""
  if (error instanceof ElsewhereError) return error.message
  if (name === "QuotaExceededError")
    return `This browser has no room left. Save the ${what} to a file, then take plans you no longer need off the shelf.`
  if (name === "VersionError")
    return `A newer Partline has used this browser's shelf. Save the ${what} to a file and reload the page.`
  if (name === "ReferenceError" || name === "SecurityError")
    return `This window keeps nothing, as private windows do. Save the ${what} to a file before you close it.`
  return `The browser could not keep the ${what}${name ? ` (${name})` : ""}. Save it to a file and reload the page.`
}

/** Another tab has been at the plan since this one read it. */
export class ElsewhereError extends Error {}
