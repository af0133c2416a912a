import { cpus } from 'node:os'
import { benchCalls } from './calls.ts'
import { benchDensity } from './density.ts'
import { benchDiscord } from './discord.ts'
import { benchDiscordMemory } from './discord-memory.ts'
import { benchPictures } from './pictures.ts'
import { benchSolves } from './solves.ts'
import { benchStartup } from './startup.ts'
import { benchStore } from './store.ts'
import { benchTalk, isTalkSet } from './talk.ts'

const BENCHES = {
  calls: benchCalls,
  density: benchDensity,
  pictures: benchPictures,
  solves: benchSolves,
  startup: benchStartup,
  store: benchStore,
  talk: benchTalk,
  discord: benchDiscord,
  'discord-memory': benchDiscordMemory,
}

/**
 * Every bench, or those named (`npm run bench -- store`), one after the other, each beside its reference in the same run. Sets of
 * sentences may be named behind `talk`: `npm run bench -- talk own-1 own-2`.
 */
const args = process.argv.slice(2)
const sets = args.includes('talk') ? args.filter(isTalkSet) : []
const named = args.filter((name) => !sets.some((set) => set === name))
const unknown = named.filter((name) => !Object.hasOwn(BENCHES, name))
if (unknown.length > 0) throw new Error(`no bench ${unknown.join(', ')}: ${Object.keys(BENCHES).join(', ')}`)
for (const [key, bench] of Object.entries(BENCHES)) {
  if (named.length > 0 && !named.includes(key)) continue
  const { name, rows } = await bench(sets)
  console.log(`\n${name}`)
  const width = Math.max(...rows.map(([label]) => label.length))
  for (const [label, value, goal] of rows) {
    console.log(`  ${label.padEnd(width)}  ${value}${goal === undefined ? '' : `  (goal: ${goal})`}`)
  }
}
console.log(`\nNode ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}`)
