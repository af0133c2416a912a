/** Whose measures a person cooks with. */
export type Kitchen = 'metric' | 'us'
