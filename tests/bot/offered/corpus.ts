import { readFileSync } from 'node:fs'
import { NOBODY, type Person } from '../../../store/person.ts'
import { deskOf, type Setting } from './offers.ts'

export const NOW_MS = Date.parse('2026-12-05T12:00:00Z')

/** Jars in every stage: plum is done, coffee bottled, walnut sweetened, ginger strained, lemon and herb steep. */
const STEPS = [
  ['2026-10-01', '/jar start plum of:500 g sloes spirit:700 ml 40%'],
  ['2026-10-01', '/jar start coffee of:50 g coffee beans, cracked spirit:1 l 60%'],
  ['2026-10-01', '/jar start walnut of:1 kg green walnuts spirit:1 l 95%'],
  ['2026-10-01', '/jar start ginger of:60 g ginger spirit:500 ml 75% to-strength:35% to-sweetness:rich'],
  ['2026-10-10', '/jar strain coffee measured:900 ml'],
  ['2026-10-11', '/jar sweeten coffee water:500 ml sugar:300 g'],
  ['2026-10-20', '/jar bottle coffee bottles:2 x 500 ml'],
  ['2026-10-28', '/jar strain ginger measured:450 ml strength:70%'],
  ['2026-11-10', '/jar strain walnut measured:900 ml'],
  ['2026-11-11', '/jar sweeten walnut water:1 l sugar:500 g'],
  ['2026-11-20', '/jar strain plum'],
  ['2026-11-21', '/jar empty plum'],
  ['2026-12-01', '/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'],
  ['2026-12-02', '/jar start herb of:20 g peppermint leaves + 1 stick cinnamon, ceylon spirit:500 ml 60%'],
] as const

export async function somebody(place: Setting['place']): Promise<Person> {
  let person = NOBODY
  for (const [day, line] of STEPS) {
    const desk = await deskOf({ person, nowMs: Date.parse(`${day}T12:00:00Z`), place, zone: 'UTC' })
    const outcome = await desk.run(line)
    if (!outcome.ok) throw new Error(`${line}: ${outcome.error.problem}`)
    person = await desk.person()
  }
  return person
}

const read = (name: string): string => readFileSync(new URL(name, import.meta.url), 'utf8')

/** Lines as they are typed, right and wrong. */
export const typed: readonly string[] = read('typed.txt')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))

/** The lines of the README, and of the one of the bot. */
export const readme: readonly string[] = ['../../../README.md', '../../../bot/README.md'].flatMap((path) =>
  [...read(path).matchAll(/^(?:larderbell> |)(\/[a-z].*)$/gm)].map(([, line]) => line!),
)
