import { DomainError } from '../../core/domain-error.ts'
import { shown } from '../../core/quantity/read/tokens.ts'

export const FORMATS = ['json', 'csv'] as const

export type ExportFormat = (typeof FORMATS)[number]

/** Throws `no_format`. */
export function parseFormat(text: string): ExportFormat {
  const found = FORMATS.find((format) => format === text.trim().toLowerCase())
  if (found === undefined) throw new DomainError('bad_value', 'no_format', { typed: shown(text) })
  return found
}
