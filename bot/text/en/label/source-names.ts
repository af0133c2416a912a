import type { Cited, SourceKey } from '../../../../core/label/sources.ts'
import { listed } from '../phrases.ts'

/** Sources by the name a reader knows them by. */
const sourceNames: Readonly<Record<SourceKey, string>> = {
  eu_2019_787: 'Regulation (EU) 2019/787',
  eu_110_2008: 'Regulation (EC) 110/2008',
  eu_1169_2011: 'Regulation (EU) 1169/2011',
  cfr_27_5: '27 CFR 5.150',
  cfr_27_19: '27 CFR 19.356',
  gi_sorrento: 'product file of 2012',
  gi_mirto: 'product file of 2013',
  gi_genepi: 'product file of 2012',
  gi_pacharan: 'its regulation',
  uk_cmo_2016: 'UK Chief Medical Officers 2016',
  drinks_table: 'a table of standard drinks by country',
  icap_table: 'a table of drinking guidelines by country',
  intake_table: 'a table of recommended maximum intake',
  kalinowski_2016: 'Kalinowski and Humphreys 2016',
  who_2023: 'World Health Organization 2023',
  memory: '',
}

const HOW_FAR: Readonly<Record<Cited['trust'], string>> = {
  published: '',
  secondary: 'read second-hand, please check',
  memory: 'from memory, please check',
}

/** ` (UK Chief Medical Officers 2016)`, ` (from memory, please check)`: where a figure stands and how far to trust it. */
export const cited = ({ sources, trust }: Cited): string => {
  const names = sources.map((key) => sourceNames[key]).filter((name) => name !== '')
  const parts = [...(names.length > 0 ? [listed(names)] : []), ...(HOW_FAR[trust] === '' ? [] : [HOW_FAR[trust]])]
  return ` (${parts.join('; ')})`
}
