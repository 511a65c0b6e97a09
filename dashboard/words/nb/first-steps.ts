import type { firstSteps as English } from '../en/first-steps.ts';
import { plural } from '../plural.ts';

export const firstSteps: typeof English = {
  title: 'Veggen er bar',
  says: 'Herfra tar det omtrent fem minutter til den første vurderingen: et rom, en reol, en sensor, bordene, det første strøket. Du kan slutte når som helst og fortsette senere.',
  waiting: (count) =>
    plural('nb', count, {
      one: '# sensor sender allerede og venter på å få en plass.',
      other: '# sensorer sender allerede og venter på å få en plass.',
    }),
  begin: 'Begynn',
  goOn: 'Fortsett oppsettet',
  allAtOnce: 'Oppsett',
};
