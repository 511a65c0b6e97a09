import type { firstSteps as English } from '../en/first-steps.ts';
import { plural } from '../plural.ts';

export const firstSteps: typeof English = {
  title: 'Väggen är bar',
  says: 'Härifrån tar det ungefär fem minuter till första beskedet: ett rum, ett ställ, en givare, brädorna, första strykningen. Du kan sluta när som helst och fortsätta senare.',
  waiting: (count) =>
    plural('sv', count, {
      one: '# givare sänder redan och väntar på att få en plats.',
      other: '# givare sänder redan och väntar på att få en plats.',
    }),
  begin: 'Börja',
  goOn: 'Fortsätt att ställa in',
  allAtOnce: 'Inställning',
};
