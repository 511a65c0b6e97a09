import { cautions as words } from './en/cautions.ts';

export const shortCaution = words.short;
export const wallCaution = words.wall;
export const ragsLine = words.ragsLine;
export const ragCaution = words.rags;
