const BASE = 36

const OWNER = /^[1-9]\d{16,19}$/

/** Discord's number of a person (17 to 20 digits) in base 36; null for anybody else. */
export const ownerCode = (owner: string): string | null => (OWNER.test(owner) ? BigInt(owner).toString(BASE) : null)

/** The person whom `ownerCode` wrote so; null where that is nobody. */
export function ownerFrom(coded: string): string | null {
  if (!/^[0-9a-z]{1,14}$/.test(coded)) return null
  let owner = 0n
  for (const digit of coded) owner = owner * BigInt(BASE) + BigInt(Number.parseInt(digit, BASE))
  return ownerCode(String(owner)) === coded ? String(owner) : null
}
