/** A press that comes so soon after the answer to the same one is a finger that slipped. */
const AGAIN_MS = 2000

export interface Presses {
  /** False where the same button is being answered, or was a moment ago. */
  begin(button: string, nowMs: number): boolean
  end(button: string, nowMs: number): void
}

/** Buttons pressed just now, so that pressing one twice in a row does its work once. */
export const newPresses = (): Presses => {
  const answering = new Set<string>()
  const answeredMs = new Map<string, number>()
  return {
    begin(button, nowMs) {
      for (const [each, ms] of answeredMs) if (ms > nowMs || nowMs - ms >= AGAIN_MS) answeredMs.delete(each)
      if (answering.has(button) || answeredMs.has(button)) return false
      answering.add(button)
      return true
    },
    end(button, nowMs) {
      answering.delete(button)
      answeredMs.set(button, nowMs)
    },
  }
}
