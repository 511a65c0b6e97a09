import { v7 as newId } from 'uuid';
import { readingFlagBits } from '../sensors/correct/reading-time.ts';
import type { Clock } from './clock.ts';
import type { Closing } from './closing.ts';
import { modelPair } from './model-settings.ts';
import type { ModelPair } from './monitor/hour-book.ts';
import { postingPlan } from './notices-out.ts';
import { missingPlans } from './rules/coating-plan.ts';
import type { Settings } from './settings/schema.ts';
import { teachClock } from './site-time.ts';
import { databaseFile, openForReading } from './store/open.ts';
import { type StoreReader, storeReader } from './store/store.ts';
import { type StoreThread, startStoreThread } from './store/thread.ts';

export interface OpenSite {
  file: string;
  writer: StoreThread;
  reader: StoreReader;
  models: ModelPair;
}

/** Opens the database for writing and for reading, and puts in what a new one lacks. */
export async function openSite(
  settings: Settings,
  clock: Clock,
  atClose: Closing['atClose'],
): Promise<OpenSite> {
  const file = databaseFile(settings.data);
  const writer = await startStoreThread({
    file,
    timeUnknownBit: readingFlagBits['time-unknown'],
    maxSensors: settings.mqtt.maxSensors,
    posting: postingPlan(settings),
  });
  atClose(() => writer.close());
  const reader = storeReader(openForReading(file));
  atClose(() => reader.close());
  teachClock(clock, reader);
  const models = modelPair(settings.cure);
  await writer.keepOnlyModels([models.ruling.name, models.beside.name]);
  for (const plan of missingPlans(reader.plans())) {
    await writer.createPlan({ id: newId(), ...plan, createdAt: clock.now() });
  }
  return { file, writer, reader, models };
}
