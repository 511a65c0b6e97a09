import { z } from 'zod';

export const placeSettings = z
  .strictObject({
    floorShelfColderK: z
      .number()
      .min(0)
      .max(10)
      .default(2)
      .meta({ unit: 'K', onPage: true })
      .describe(
        'how much colder the bottom shelf of a room or rack is taken to be where one sensor hangs there alone and not on that shelf; it holds back the brush near the dew point, and changes no sum. 0 where you have looked',
      ),
  })
  .prefault({});
