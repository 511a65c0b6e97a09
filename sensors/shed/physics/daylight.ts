/** Where the invented shed stands: a latitude of temperate summers. Assumption. */
const LATITUDE_DEG = 56;
/** Tilt of the earth's axis, °. **Source:** astronomy handbooks, from memory. */
const TILT_DEG = 23.44;
/** Northern winter solstice, day of the year. From memory. */
const SOLSTICE_DAY = 355;
const YEAR_DAYS = 365.25;
const DAY_MS = 86_400_000;
const RADIANS = Math.PI / 180;

/**
 * Daylight outdoors as a share of that of an overhead sun, by the height of the sun alone.
 *
 * @param at - UTC epoch ms; the shed's noon is at 12 UTC
 * @returns 0 at night to about 0.8 at noon in June
 *
 * **Source:** solar elevation from declination, latitude and hour angle, astronomy handbooks; the
 * declination as a cosine of the day, good to about 1°.
 */
export function daylight(at: number): number {
  const days = at / DAY_MS;
  const turn = (2 * Math.PI * (days - SOLSTICE_DAY)) / YEAR_DAYS;
  const declination = -TILT_DEG * RADIANS * Math.cos(turn);
  const hourAngle = 2 * Math.PI * (days - Math.floor(days) - 0.5);
  const latitude = LATITUDE_DEG * RADIANS;
  return Math.max(
    0,
    Math.sin(latitude) * Math.sin(declination) +
      Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle),
  );
}
