import type { ComponentChildren } from 'preact';

/** A link, a figure set in bold … that stands within a sentence of the catalogue. */
export type Node = ComponentChildren;
