import type { DangerKind } from '../../../../core/jar/limits/judge-jar.ts'
import type { Weakness } from '../../../../core/liquid/keeping.ts'
import { writeLine } from '../../../chat/grammar/write-line.ts'
import type { SafetyProblems } from '../../../chat/safety-problems.ts'

const LEAST_SUGAR_G_PER_L = 1

const percent = (value: number): string => `${Number(value.toFixed(1))} % vol`

/** `9.7 % vol with 12 g/L of sugar`, `17.2 % vol, perhaps only 13.8 % vol,`. */
export const weakText = ({ abvPercent, lowAbvPercent, sugarGPerL }: Weakness): string => {
  const strength =
    lowAbvPercent === null ? percent(abvPercent) : `${percent(abvPercent)}, perhaps only ${percent(lowAbvPercent)}`
  return sugarGPerL < LEAST_SUGAR_G_PER_L ? strength : `${strength} with ${Math.round(sugarGPerL)} g/L of sugar`
}

const makeItKeep = (fix: string | null): string =>
  fix === null ? 'If it fizzes or smells off, throw it away.' : `Make it keep first (${fix}).`

/** What is wrong with a jar, in a sentence. */
const WRONG: { readonly [Kind in DangerKind]: string } = {
  refused_plant: 'is in it, and that’s not for drinking',
  refused_spirit: 'is in it, and that’s not for drinking',
  unknown_plant: 'is in it, and I don’t know that as food',
  over_ceiling: 'holds more of something than is safe',
  ferments: 'can ferment, and a closed bottle of it can burst',
  undecided: 'may or may not keep',
}

/** Why something is not planned or not done, with the line that is right. */
export const safetyProblems = {
  plan_ferments: ({ where, line, ...weak }) => {
    const what =
      where === 'jar'
        ? `It would steep at ${weakText(weak)}. That can ferment, and a closed jar of it can burst.`
        : `At ${weakText(weak)} it can ferment, and a closed bottle of it can burst.`
    return line === null ? `${what} It takes more spirit, or less of the rest.` : `${what} This would keep: ${line}`
  },
  already_poured: ({ jar, line, ...weak }) =>
    `That makes ${jar} ${weakText(weak)}, which can ferment and burst the jar. Nothing’s recorded yet. Is it in already? Then say so: ${line}`,
  bottle_ferments: ({ jar, fix, line, ...weak }) =>
    `${jar} is at ${weakText(weak)}. That can ferment and burst the bottles. ${makeItKeep(fix)} In bottles already? Then say so: ${line}`,
  label_ferments: ({ jar, fix, line, ...weak }) =>
    `${jar} is at ${weakText(weak)}. That can ferment and burst the bottles, so don’t give it away. ${makeItKeep(fix)} In bottles already? Then this prints a label that says so: ${line}`,
  jar_not_for_drinking: ({ jar, kind, typed }) =>
    `${typed === null ? jar : `${jar}: “${typed}”`} ${WRONG[kind]}. Don’t drink it or give it away. What to do: ${writeLine('jar show', jar)}`,
} satisfies { readonly [Key in keyof SafetyProblems]: (values: SafetyProblems[Key]) => string }
