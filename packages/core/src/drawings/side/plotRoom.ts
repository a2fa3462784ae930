/** Room that the plots take [paper mm]: beside a view, and above and below the stroke of the lift. */
export const plotRoom = { beside: 94, above: 27, below: 21 } as const;
