import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';

/** A day of the plan: an hour weeks ahead would say more than is known, but a tap shows it. */
export function PlannedDay({ moment }: { moment: string }) {
  const { calendar } = useReader();
  const at = Date.parse(moment);
  return <PaintersMoment at={at}>{calendar.date(at)}</PaintersMoment>;
}

/** The same where a function of a moment is asked for. */
export const plannedDay = (moment: string) => <PlannedDay moment={moment} />;
