/** How far a figure may be trusted; it travels with the figure, and a reply says so. */
export type Trust = 'published' | 'derived' | 'common_practice' | 'estimated' | 'memory' | 'not_found'
