import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ethanolWaterDensityKgPerM3 } from '../../core/liquid/ethanol-water.ts'
import { A, B, C } from '../../core/liquid/r22-coefficients.ts'

const EVALUATIONS = 1_000_000
const ROUNDS = 25

interface Timing {
  readonly bestS: number
  readonly checksum: number
}

const inTypeScript = (): Timing => {
  let bestS = Number.POSITIVE_INFINITY
  let checksum = 0
  for (let round = 0; round < ROUNDS; round++) {
    checksum = 0
    const startMs = performance.now()
    for (let i = 0; i < EVALUATIONS; i++) checksum += ethanolWaterDensityKgPerM3((i % 1001) / 1000, (i % 61) - 20)
    bestS = Math.min(bestS, (performance.now() - startMs) / 1000)
  }
  return { bestS, checksum }
}

/** Null where there is no C compiler. */
const inC = (): Timing | null => {
  const folder = mkdtempSync(join(tmpdir(), 'larderbell-bench-'))
  try {
    const program = join(folder, 'density')
    const source = fileURLToPath(new URL('./density.c', import.meta.url))
    execFileSync('cc', ['-O2', '-o', program, source], { stdio: 'pipe' })
    const input = [A, ...B.map((constant, j) => [constant, ...(C[j] ?? [])])].flat().join(' ')
    const output = execFileSync(program, [String(EVALUATIONS), String(ROUNDS)], { input, encoding: 'utf8' })
    const [bestS, checksum] = output.trim().split(' ').map(Number)
    return { bestS: bestS!, checksum: checksum! }
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null
    throw error
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const perSecond = ({ bestS }: Timing): string => `${(EVALUATIONS / bestS / 1e6).toFixed(1)} million/s`

/** Evaluations of the R 22 density in a second, beside the same formula in C on the same inputs; the best of 25 rounds. */
export async function benchDensity(): Promise<{ name: string; rows: [label: string, value: string, goal?: string][] }> {
  const name = 'ethanol–water density'
  const typescript = inTypeScript()
  const c = inC()
  if (c === null)
    return {
      name,
      rows: [
        ['TypeScript', perSecond(typescript)],
        ['C', 'no compiler `cc` here'],
      ],
    }
  const difference = Math.abs(typescript.checksum / c.checksum - 1)
  if (!(difference < 1e-12)) throw new Error(`checksums differ: ${typescript.checksum} and ${c.checksum}`)
  return {
    name,
    rows: [
      ['TypeScript', perSecond(typescript)],
      ['C, cc -O2', perSecond(c)],
      ['TypeScript / C', (c.bestS / typescript.bestS).toFixed(2), 'at least 0.50'],
      ['checksums differ by', difference.toExponential(1), 'below 1e-12'],
    ],
  }
}
