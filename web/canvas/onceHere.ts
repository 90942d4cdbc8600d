/**
 * Begins to listen as soon as the module has come, unless nobody waits any more. Returns how to stop. The hands are
 * fetched beside the first drawing of the head, not before it.
 */
export function onceHere<Module>(coming: Promise<Module>, listen: (module: Module) => () => void) {
  let isAwaited = true
  let stop = () => {}
  void coming.then((module) => {
    if (isAwaited) stop = listen(module)
  })
  return () => {
    isAwaited = false
    stop()
  }
}
