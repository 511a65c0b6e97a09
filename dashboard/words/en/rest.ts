/** All that only other pages than the wall need: fetched with the first of them. */
export const rest = {};
