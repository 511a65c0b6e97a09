import type { Node } from '../node.ts';

/** The page for whoever writes a program that talks to the daemon. */
export const apiPage = {
  title: 'For programs',
  about: (stream: Node, description: Node) => [
    'What the pages here show, other programs can read and write the same way. JSON, times in ISO 8601 UTC, temperatures in °C. Live changes come as server-sent events from ',
    stream,
    '. The whole description: ',
    description,
  ],
  /** Headings of the table of what a route takes. */
  field: 'Field',
  type: 'Type',
  aboutField: 'About',
  optional: (name: Node) => [name, ' (may be left out)'],
  /** Where a parameter of a request stands; `where` is “path” or “query”. */
  inThe: (name: string, where: string) => `${name} (in the ${where})`,
  /** Between types of which one is taken: “number or null”. */
  either: (types: readonly string[]) => types.join(' or '),
  listOf: (type: string) => `list of ${type}`,
  listOfAnything: 'list of values',
};
