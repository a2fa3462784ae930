/** Fields that somebody sets in use: they are always given by the two ends that they can be set to. */
export const setByNature: readonly string[] = ['tractor.ballSpan', 'tractor.topLinkLength'];
