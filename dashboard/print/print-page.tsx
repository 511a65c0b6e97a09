import type { PrintSheet } from '../router.ts';
import { DoorCard } from './door-card.tsx';
import { PotLabel } from './pot-label.tsx';
import { RackCard } from './rack-card.tsx';
import { StickStrip } from './stick-strip.tsx';

interface PrintPageProps {
  sheet: PrintSheet;
  given: URLSearchParams;
}

/** One sheet to print, at true size. */
export function PrintPage({ sheet, given }: PrintPageProps) {
  switch (sheet) {
    case 'strip':
      return <StickStrip given={given} />;
    case 'label':
      return <PotLabel given={given} />;
    case 'rack':
      return <RackCard given={given} />;
    case 'door':
      return <DoorCard />;
  }
}
