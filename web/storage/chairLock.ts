/** Holds the chair of a plan for this window, so that only one writes. Browsers without locks leave it to the revs. */
export type ChairLock = { release(): void }

/** The lock, or null when another window holds it. `onLost` is called when another window takes it over. */
export function holdChair(planId: string, { steal, onLost }: { steal: boolean; onLost: () => void }) {
  const { locks } = navigator
  if (!locks) return Promise.resolve<ChairLock | null>({ release: () => {} })
  return new Promise<ChairLock | null>((settle) => {
    const options = steal ? { steal: true } : { ifAvailable: true }
    locks
      .request(`partline-chair-${planId}`, options, (lock) => {
        if (!lock) return settle(null)
        return new Promise<void>((release) => settle({ release }))
      })
      .catch(onLost)
  })
}
