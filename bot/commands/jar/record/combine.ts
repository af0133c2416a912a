import { DomainError } from '../../../../core/domain-error.ts'
import { freeName } from '../../../../core/jar/entry/jar-name.ts'
import { newJarId } from '../../../../core/jar/entry/new-jar-id.ts'
import { pourApart } from '../../../../core/jar/pour/pour-apart.ts'
import { pourTogether } from '../../../../core/jar/pour/pour-together.ts'
import { shareMeant } from '../../../../core/jar/pour/share-meant.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import { findWhole } from '../../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { expectFree, namesTaken } from '../../../../core/jar/state/running-jars.ts'
import type { Jar, Person } from '../../../../store/person.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { type InputOf, signature } from '../../../calls/signatures.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import { pouredOff } from '../../options/input-to-portion.ts'
import { expectNothingOpen, expectNothingTold } from '../known/told-trouble.ts'
import { pouredReply } from '../step/poured-reply.ts'
import { change, enteredBy, momentGiven } from '../step/record-step.ts'

/** The jars after it, the one that holds both first. */
interface Combined {
  readonly target: Jar
  readonly touched: readonly Jar[]
  readonly names: readonly [first: string, second: string]
}

/** Later than all that happened to either. */
const latest = (jars: readonly Jar[]): Jar['entries'] =>
  jars.map(({ entries }) => entries).toSorted((one, other) => (other.at(-1)?.atMs ?? 0) - (one.at(-1)?.atMs ?? 0))[0]!

function combine(person: Person, input: InputOf<'jar combine'>, context: Context) {
  const { nowMs } = context
  const { jars } = person
  const [first, second] = [findWhole(input.jar.is, jars), asOptionProblem('with', () => findWhole(input.with.is, jars))]
  const [one, other] = [jarStateOf(first.entries)!, jarStateOf(second.entries)!]
  expectNothingTold(one)
  expectNothingOpen(other)
  if (first.id === second.id) throw new DomainError('bad_value', 'pour_same_jar', { jar: one.name })
  const into = input.into?.is ?? null
  const others = jars.filter(({ id }) => id !== first.id && id !== second.id)
  if (into !== null) asOptionProblem('into', () => expectFree(into, others))
  const moment = momentGiven(input.when, latest([first, second]), context)
  const meta = enteredBy(input, context)
  const read = (amount: typeof input.amount) => (amount === undefined ? null : pouredOff(amount.is))
  const part = asOptionProblem('amount', () => shareMeant(one, read(input.amount)))
  const share = asOptionProblem('with-amount', () => shareMeant(other, read(input['with-amount'])))
  const taken = jars.map(({ id }) => id)
  const isWhole = part.value >= 1
  if (!isWhole && into === null) {
    const free = freeName(`${one.name} and ${other.name}`, namesTaken(jars))
    throw new DomainError('bad_value', 'pour_where', { jar: one.name, other: other.name, free })
  }
  const apart = isWhole ? null : pourApart(first, { share: part, into: into! }, moment, meta)
  const base: Jar =
    apart === null ? first : { ...first, id: newJarId(`${into} ${nowMs}`, taken), entries: apart.portion.entries }
  const poured = pourTogether({ target: base, source: second, share, into: isWhole ? into : null }, moment, meta)
  const target: Jar = { ...base, entries: poured.target.entries }
  const source: Jar = { ...second, entries: poured.source.entries }
  const rest = apart === null ? [] : [{ ...first, entries: apart.rest.entries }]
  const touched = [target, source, ...rest]
  const changed = new Map(touched.map((jar) => [jar.id, jar]))
  const all = [...jars.map((jar) => changed.get(jar.id) ?? jar), ...(apart === null ? [] : [target])]
  const made: Combined = { target, touched, names: [one.name, other.name] }
  return { person: { ...person, jars: all }, made }
}

export const jarCombineCommand = defineCommand({
  ...signature('jar combine'),
  topic: 'jars',
  async run(input, context) {
    const { target, touched, names } = await change(context, (person) => combine(person, input, context))
    const story = jarStateOf(target.entries)!
    const values = { names, into: story.name, volumeMl: contentsOf(story).outcome.volumeMl }
    return pouredReply(context, input, target, touched, { group: 'headlines', key: 'jar_combined', values })
  },
})
