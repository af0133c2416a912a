import type { SourceKey } from './sources.ts'
import type { Trust } from './trust.ts'

/**
 * What a legal product specification asks of a drink that carries a protected name. Its doses are grams in a litre of
 * FINISHED drink and are not to be compared with the doses of the catalogue, which are per litre of steeping spirit.
 */
export interface ProductFile {
  readonly id: 'sorrento' | 'amalfi' | 'galicia' | 'pacharan' | 'mirto' | 'genepi'
  readonly botanicals: readonly string[]
  readonly finishedGPerL: {
    readonly min: number
    readonly max: number | null
    readonly of: 'whole_fruit' | 'plant'
  } | null
  readonly steepDays: { readonly min: number; readonly max: number | null } | null
  readonly spiritPercent: { readonly min: number; readonly max: number | null } | null
  readonly drinkPercent: { readonly min: number; readonly max: number | null } | null
  readonly sugarGPerL: { readonly min: number | null; readonly max: number | null } | null
  readonly trust: Trust
  readonly sources: readonly SourceKey[]
}

export const productFiles: readonly ProductFile[] = [
  {
    id: 'sorrento',
    botanicals: ['lemon_peel'],
    finishedGPerL: { min: 250, max: null, of: 'whole_fruit' },
    steepDays: { min: 2, max: null },
    spiritPercent: null,
    drinkPercent: { min: 30, max: null },
    sugarGPerL: { min: 200, max: 350 },
    trust: 'published',
    sources: ['gi_sorrento'],
  },
  {
    id: 'amalfi',
    botanicals: ['lemon_peel'],
    finishedGPerL: { min: 250, max: null, of: 'whole_fruit' },
    steepDays: { min: 1.5, max: null },
    spiritPercent: null,
    drinkPercent: null,
    sugarGPerL: null,
    trust: 'published',
    sources: ['gi_amalfi'],
  },
  {
    id: 'galicia',
    botanicals: ['coffee_whole', 'coffee_cracked', 'coffee_ground'],
    finishedGPerL: null,
    steepDays: null,
    spiritPercent: null,
    drinkPercent: { min: 20, max: 40 },
    sugarGPerL: { min: 100, max: null },
    trust: 'published',
    sources: ['gi_galicia'],
  },
  {
    id: 'pacharan',
    botanicals: ['sloe'],
    finishedGPerL: { min: 125, max: 250, of: 'plant' },
    steepDays: { min: 30, max: 240 },
    spiritPercent: { min: 30, max: 50 },
    drinkPercent: null,
    sugarGPerL: null,
    trust: 'published',
    sources: ['gi_pacharan'],
  },
  {
    id: 'mirto',
    botanicals: ['myrtle_berries'],
    finishedGPerL: { min: 150, max: null, of: 'plant' },
    steepDays: { min: 15, max: 240 },
    spiritPercent: { min: 40, max: null },
    drinkPercent: { min: 28, max: 36 },
    sugarGPerL: { min: null, max: 270 },
    trust: 'published',
    sources: ['gi_mirto'],
  },
  {
    id: 'genepi',
    botanicals: ['genepi'],
    finishedGPerL: { min: 7, max: null, of: 'plant' },
    steepDays: { min: 30, max: 60 },
    spiritPercent: { min: 70, max: 90 },
    drinkPercent: { min: 30, max: null },
    sugarGPerL: { min: 100, max: null },
    trust: 'published',
    sources: ['gi_genepi'],
  },
]
