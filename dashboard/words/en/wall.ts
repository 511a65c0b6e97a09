/** The wall, and what an empty one says. */
export const wall = {
  title: 'The wall',
};
