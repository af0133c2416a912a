/** Digits after which a double that was computed from a typed number is that number again. */
const SURE_DIGITS = 12

/** As many zeros at the end as a reading may have had: `1.50 l` is read more finely than `1.5 l`. */
const MOST_ZEROS = 3

const DENOMINATORS = [2, 3, 4, 5, 6, 8] as const

/** One group of three digits behind a point, which a reading may have taken as thousands: `5.000 mg`. */
const OPEN = /^[0-9]{1,3}\.[0-9]{3}$/

const isNear = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.abs(other)

function decimals(value: number): readonly string[] {
  const plain = String(Number(value.toPrecision(SURE_DIGITS)))
  const zeros = Array.from({ length: MOST_ZEROS }, (_, index) => '0'.repeat(index + 1))
  return [plain, ...zeros.map((end) => (plain.includes('.') ? `${plain}${end}` : `${plain}.${end}`))]
}

function fractions(value: number): readonly string[] {
  const whole = Math.floor(value)
  return DENOMINATORS.flatMap((under) => {
    const over = Math.round((value - whole) * under)
    if (over <= 0 || over >= under || !isNear(whole + over / under, value)) return []
    return [whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`]
  })
}

function grouped(value: number): readonly string[] {
  const text = String(value)
  return /^[1-9][0-9]{3,5}$/.test(text) ? [`${text.slice(0, -3)}.${text.slice(-3)}`] : []
}

/** The ways to write a number of 0 or more, the plainest first; one that could be read in two ways last. */
export function numberTexts(value: number): readonly string[] {
  const found = decimals(value)
  return [
    ...found.filter((text) => !OPEN.test(text)),
    ...fractions(value),
    ...found.filter((text) => OPEN.test(text)),
    ...grouped(value),
  ]
}
