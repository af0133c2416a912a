/** Arguments for Node with which a process believes that it is so much later; timers run as ever. */
export const clockAhead = (byMs: number): readonly string[] => {
  const code = `const Real = Date
    globalThis.Date = class extends Real {
      constructor(...given) { given.length === 0 ? super(Real.now() + ${byMs}) : super(...given) }
      static now() { return Real.now() + ${byMs} }
    }`
  return ['--import', `data:text/javascript,${encodeURIComponent(code)}`]
}
