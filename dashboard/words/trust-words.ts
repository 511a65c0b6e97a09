import type { CalibrationHow, Salt } from '../../daemon/contract/calibration.ts';
import type { SensorHeight } from '../../daemon/contract/sensor.ts';

export const saltWords: Readonly<Record<Salt, string>> = {
  'sodium-chloride': 'Sodium chloride (table salt), about 75 %',
  'magnesium-chloride': 'Magnesium chloride, about 33 %',
  'magnesium-nitrate': 'Magnesium nitrate, about 54 %',
  'potassium-chloride': 'Potassium chloride, about 85 %',
  'potassium-sulfate': 'Potassium sulfate, about 98 %',
  'lithium-chloride': 'Lithium chloride, about 11 %',
};

export const calibrationWords: Readonly<Record<CalibrationHow['kind'], string>> = {
  'hand-meter': 'A hand meter beside it',
  offset: 'Offset',
  'two-point': 'Two points',
  salts: 'Saturated salts',
  'ice-point': 'Ice water',
  'test-resistor': 'Test resistor',
};

export const heightWords: Readonly<Record<SensorHeight, string>> = {
  'bottom-shelf': 'on the bottom shelf',
  'eye-height': 'at eye height',
  'top-shelf': 'on the top shelf',
};
