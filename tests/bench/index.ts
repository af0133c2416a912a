import { cpus } from 'node:os'
import { benchDensity } from './density.ts'
import { benchSolves } from './solves.ts'
import { benchStartup } from './startup.ts'

/** Every bench, one after the other, each beside its reference in the same run. */
for (const bench of [benchDensity, benchSolves, benchStartup]) {
  const { name, rows } = await bench()
  console.log(`\n${name}`)
  const width = Math.max(...rows.map(([label]) => label.length))
  for (const [label, value, goal] of rows) {
    console.log(`  ${label.padEnd(width)}  ${value}${goal === undefined ? '' : `  (goal: ${goal})`}`)
  }
}
console.log(`\nNode ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}`)
