import { z } from 'zod';

const clockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);

export const workSettings = z
  .strictObject({
    days: z
      .array(z.enum(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']))
      .min(1)
      .default(['mon', 'tue', 'wed', 'thu', 'fri'])
      .meta({ onPage: true })
      .describe('days on which boards are brushed and put up; the plan ahead goes by them'),
    from: clockTime
      .default('08:00')
      .meta({ unit: 'local time, hh:mm', onPage: true })
      .describe('work begins'),
    to: clockTime
      .default('17:00')
      .meta({ unit: 'local time, hh:mm', onPage: true })
      .describe('work ends'),
    brushM2PerHour: z
      .number()
      .positive()
      .max(500)
      .default(8)
      .meta({ unit: 'm²/h', onPage: true })
      .describe('what all hands brush together; common practice, no source'),
    mountBoardsPerHour: z
      .number()
      .positive()
      .max(1000)
      .default(15)
      .meta({ unit: '1/h', onPage: true })
      .describe('boards that all hands put up together; common practice, no source'),
    goesUpAfter: z
      .enum(['primer', 'last-coat'])
      .default('primer')
      .meta({ onPage: true })
      .describe('when boards leave the rack for the wall: later coats are then brushed there'),
    leastDayMeanC: z
      .number()
      .min(-5)
      .max(20)
      .default(7)
      .meta({ unit: '°C', onPage: true })
      .describe(
        'mean temperature of a day from which brushing is planned on it: its working hours are then likely above 5 °C; assumption',
      ),
    monthlyMeanC: z
      .array(z.number().min(-60).max(45))
      .length(12)
      .nullable()
      .default(null)
      .meta({ unit: '°C', onPage: true })
      .describe(
        'mean outdoor temperature of each month, January first, as the weather service publishes it: used until the site has a year of its own record',
      ),
  })
  .refine(({ from, to }) => from < to, {
    message: 'must be after from',
    path: ['to'],
    params: { fault: 'must-rise', names: ['work.from', 'work.to'] },
  })
  .prefault({});
