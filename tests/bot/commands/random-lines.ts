import fc from 'fast-check'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from './desk.ts'

const examples = Object.values(en.commands).flatMap((text) => text.examples)

/** Amounts, strengths and the rest as people type them, among them the ends of what is accepted and what is beyond. */
const VALUES = [
  '0.1 ml',
  '1000 l',
  '1,5 L',
  '920 ml',
  '770 g',
  '0.01 g',
  '1000 kg',
  '¾ cup',
  '1 1/2 cups',
  '5 gallons',
  '1 lb 4 oz',
  '930±5 ml',
  '1±0.999 l',
  '930 ml at 28 C',
  '1 l at -20 C',
  '1 l at 40 C',
  '0.1%',
  '0.1±0.09%',
  '5%',
  '40%',
  '43.7%',
  '95',
  '96%',
  '100%',
  '99.9±50%',
  '200 proof',
  '90.6% at 28 C',
  '0.1% at 40 C',
  '100% at 0 C',
  '0 g/L',
  '0.001 g/L',
  '250',
  '1200 g/L',
  'rich',
  'dry',
  '1:1',
  '0.01',
  '20:1',
  '1 l 96% + 1 l 0.1%',
  '0.1 ml 100% + 1000 l 0.1%',
  '600 ml 47% 250 g/L + 300 ml 33% 350 g/L',
  '1 l 1200 g/L',
  '1 l 0.1% 1200 g/L',
  '500 g sugar',
  '2 ½ cups',
]

const ODD = [
  '1e5 l',
  '-3 ml',
  '9'.repeat(400),
  '1,000 ml',
  '0.95',
  '🍋',
  '\u202e',
  '\u0000',
  '""',
  'NaN',
  '+',
  '±',
  ':',
  '%',
]

const SWEETENERS = ['honey', 'maple syrup', '1:1 syrup by weight', 'sugar']

const optionsOf = (path: string) => Object.keys(commands.find((command) => command.path === path)!.input.shape)

const value = fc.oneof({ arbitrary: fc.constantFrom(...VALUES), weight: 9 }, fc.constantFrom(...ODD))

/** A number of any size between the ends that are accepted, evenly over its powers of ten. */
const size = (low: number, high: number) =>
  fc.double({ min: Math.log10(low), max: Math.log10(high), noNaN: true }).map((power) => (10 ** power).toFixed(4))

const fitting: Readonly<Record<string, fc.Arbitrary<string>>> = {
  amount: size(0.1, 1e6).map((text) => `${text} ml`),
  strength: size(0.1, 100).map((text) => `${text}%`),
  sweetness: size(0.001, 1200).map((text) => `${text} g/L`),
  ratio: size(0.01, 20),
  freezer: fc.integer({ min: -30, max: -5 }).map((celsius) => `${celsius} C`),
}

const kindOf = (option: string) => {
  if (option.endsWith('strength')) return 'strength'
  if (option.endsWith('sweetness')) return 'sweetness'
  return option === 'ratio' || option === 'freezer' ? option : 'amount'
}

const path = fc.constantFrom(...commands.map((command) => command.path))

/** Commands of amounts, strengths and sweetness. */
const reckoning = fc.constantFrom('mix', 'syrup', 'dilute', 'blend', 'adjust', 'serving', 'label')

/** Every option of such a command with a value that fits it, some left out: many of these are answered. */
export const fittingLine = reckoning.chain((name) => {
  // What is of a jar has none of its numbers.
  const options = optionsOf(name).filter((option) => option !== 'jar' && !option.startsWith('glass'))
  // What an amount is worked out of has none of its own.
  const isNamed = (option: string) => option === 'sugar' && name !== 'mix'
  const fittingOf = (option: string) =>
    option === 'parts'
      ? fc.constantFrom(...VALUES.slice(-6, -2))
      : isNamed(option)
        ? fc.constantFrom(...SWEETENERS)
        : fitting[kindOf(option)]!
  const one = (option: string) => fc.option(fittingOf(option), { freq: 5 })
  return fc
    .tuple(...options.map(one))
    .map((values) => `/${name}${values.map((each, at) => (each === null ? '' : ` ${options[at]}:${each}`)).join('')}`)
})

/** Options of a command with any value, swapped, doubled or made up. */
export const swappedLine = path.chain((name) =>
  fc
    .array(fc.tuple(fc.constantFrom(...optionsOf(name), 'to-strength', 'sugar', 'colour'), value), { maxLength: 6 })
    .map((pairs) => `/${name} ${pairs.map(([option, each]) => `${option}:${each}`).join(' ')}`),
)

/** An example with a piece of it cut out, doubled or replaced. */
export const brokenLine = fc
  .record({ line: fc.constantFrom(...examples), at: fc.nat(80), length: fc.nat(6), put: fc.oneof(value, fc.string()) })
  .map(({ line, at, length, put }) => line.slice(0, at) + put + line.slice(at + length))

export const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ unit: 'grapheme', maxLength: 60 }).map((text) => `/mix ${text}`),
  fc.string({ unit: 'grapheme', maxLength: 60 }).map((text) => `/blend ${text} 40% + 1 l`),
)
