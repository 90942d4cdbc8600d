/** Windows that must not be loaded anew share this lock: at the chair, or with a change that is not saved yet. */
const lockName = "partline-undisturbed"

/** Takes part in the lock for as long as there is work in this window; `watch` calls after each change. */
export function leaveWorkAlone(isAtWork: () => boolean, watch: (onChange: () => void) => void) {
  let release: (() => void) | null = null
  const follow = () => {
    if (isAtWork() === (release !== null)) return
    if (release) release()
    release = isAtWork() ? holdUndisturbed() : null
  }
  follow()
  watch(follow)
}

/** Keeps every window of this browser from being loaded anew, until the returned function is called. */
function holdUndisturbed(): () => void {
  let release = () => {}
  const released = new Promise<void>((done) => {
    release = done
  })
  void navigator.locks?.request(lockName, { mode: "shared" }, () => released)
  return release
}

/** Runs the work while no window of this browser asks to be left alone; false when one does. */
export async function whenUndisturbing(work: () => Promise<void>): Promise<boolean> {
  if (!navigator.locks) {
    await work()
    return true
  }
  return navigator.locks.request(lockName, { ifAvailable: true }, async (lock) => {
    if (lock) await work()
    return lock !== null
  })
}
