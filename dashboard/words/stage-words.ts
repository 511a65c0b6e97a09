import { stages } from './en/stages.ts';

export const stageWords = stages;
