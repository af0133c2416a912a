import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import type { Weakness } from '../../../core/liquid/keeping.ts'
import type { ToldOfJar } from './jar-danger.ts'

/** Of a jar that is there; `fix`: the line that adds enough spirit, null where none does. */
interface FermentingJar extends Weakness {
  readonly jar: string
  readonly fix: string | null
  /** The line that says it has happened already. */
  readonly line: string
}

/** Why something is not planned, or asked about first: it would ferment, or must not be drunk. Lines are whole lines. */
export interface SafetyProblems {
  /** `line`: a plan that was tried and keeps; null where none was found. */
  /** With a whole line whose sugar is less. */
  plan_too_sweet: { readonly sugarGPerL: number; readonly toSugarGPerL: number; readonly line: string }
  plan_ferments: Weakness & { readonly where: 'jar' | 'drink'; readonly line: string | null }
  /** What went in would make it ferment, or was it poured already? */
  already_poured: Weakness & { readonly jar: string; readonly line: string }
  /** All of it is in bottles: did more sugar go into them? */
  sweeten_bottled: { readonly jar: string; readonly line: string }
  bottle_ferments: FermentingJar
  label_ferments: FermentingJar
  /** What must not be finished, made again or shown to others; `typed`: what is refused in it. */
  jar_not_for_drinking: { readonly jar: string; readonly kind: DangerKind; readonly typed: string | null }
  /** Its maker told of a trouble; `line`: that it was nothing. */
  jar_told_held: ToldOfJar & { readonly line: string }
  /** Nothing stands that it was told of. */
  nothing_told: { readonly jar: string }
}
