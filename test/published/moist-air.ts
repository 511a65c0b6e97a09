/** One state of moist air at 101,325 Pa. */
export type MoistAirState = {
  readonly tempC: number;
  readonly rhPercent: number;
  readonly saturationPa: number;
  readonly dewPointC: number;
  readonly humidityRatio: number;
  readonly absoluteHumidityGM3: number;
};

/**
 * States worked with a general psychrometrics library that follows ASHRAE Fundamentals 2017, ch. 1.
 *
 * **Source:** psychrolib 2.5.0 (JavaScript package 1.1.1); its own documented example is the
 * dew point of 21.3094 °C at 25 °C and 80 %. Below 0 °C its dew point is the frost point.
 */
export const MOIST_AIR: readonly MoistAirState[] = [
  {
    tempC: 0,
    rhPercent: 50,
    saturationPa: 611.154,
    dewPointC: -8.1636,
    humidityRatio: 0.0018813,
    absoluteHumidityGM3: 2.424,
  },
  {
    tempC: 5,
    rhPercent: 80,
    saturationPa: 872.487,
    dewPointC: 1.8413,
    humidityRatio: 0.0043141,
    absoluteHumidityGM3: 5.4372,
  },
  {
    tempC: 10,
    rhPercent: 30,
    saturationPa: 1227.995,
    dewPointC: -6.0105,
    humidityRatio: 0.0022695,
    absoluteHumidityGM3: 2.8191,
  },
  {
    tempC: 10,
    rhPercent: 60,
    saturationPa: 1227.995,
    dewPointC: 2.5998,
    humidityRatio: 0.0045557,
    absoluteHumidityGM3: 5.6382,
  },
  {
    tempC: 10,
    rhPercent: 90,
    saturationPa: 1227.995,
    dewPointC: 8.4372,
    humidityRatio: 0.0068586,
    absoluteHumidityGM3: 8.4573,
  },
  {
    tempC: 15,
    rhPercent: 50,
    saturationPa: 1705.448,
    dewPointC: 4.6719,
    humidityRatio: 0.0052785,
    absoluteHumidityGM3: 6.412,
  },
  {
    tempC: 15,
    rhPercent: 75,
    saturationPa: 1705.448,
    dewPointC: 10.6099,
    humidityRatio: 0.0079516,
    absoluteHumidityGM3: 9.6181,
  },
  {
    tempC: 20,
    rhPercent: 30,
    saturationPa: 2338.804,
    dewPointC: 1.9143,
    humidityRatio: 0.0043368,
    absoluteHumidityGM3: 5.186,
  },
  {
    tempC: 20,
    rhPercent: 50,
    saturationPa: 2338.804,
    dewPointC: 9.2724,
    humidityRatio: 0.0072617,
    absoluteHumidityGM3: 8.6433,
  },
  {
    tempC: 20,
    rhPercent: 65,
    saturationPa: 2338.804,
    dewPointC: 13.2272,
    humidityRatio: 0.0094734,
    absoluteHumidityGM3: 11.2363,
  },
  {
    tempC: 20,
    rhPercent: 80,
    saturationPa: 2338.804,
    dewPointC: 16.4471,
    humidityRatio: 0.0117007,
    absoluteHumidityGM3: 13.8293,
  },
  {
    tempC: 20,
    rhPercent: 95,
    saturationPa: 2338.804,
    dewPointC: 19.1746,
    humidityRatio: 0.0139438,
    absoluteHumidityGM3: 16.4223,
  },
  {
    tempC: 23,
    rhPercent: 50,
    saturationPa: 2810.442,
    dewPointC: 12.0284,
    humidityRatio: 0.0087467,
    absoluteHumidityGM3: 10.2811,
  },
  {
    tempC: 25,
    rhPercent: 40,
    saturationPa: 3169.216,
    dewPointC: 10.4757,
    humidityRatio: 0.0078798,
    absoluteHumidityGM3: 9.2126,
  },
  {
    tempC: 25,
    rhPercent: 60,
    saturationPa: 3169.216,
    dewPointC: 16.7011,
    humidityRatio: 0.011895,
    absoluteHumidityGM3: 13.8189,
  },
  {
    tempC: 25,
    rhPercent: 80,
    saturationPa: 3169.216,
    dewPointC: 21.3094,
    humidityRatio: 0.0159618,
    absoluteHumidityGM3: 18.4253,
  },
  {
    tempC: 30,
    rhPercent: 30,
    saturationPa: 4246.03,
    dewPointC: 10.5479,
    humidityRatio: 0.0079183,
    absoluteHumidityGM3: 9.1044,
  },
  {
    tempC: 30,
    rhPercent: 60,
    saturationPa: 4246.03,
    dewPointC: 21.388,
    humidityRatio: 0.0160409,
    absoluteHumidityGM3: 18.2089,
  },
  {
    tempC: 35,
    rhPercent: 50,
    saturationPa: 5627.819,
    dewPointC: 23.0204,
    humidityRatio: 0.0177655,
    absoluteHumidityGM3: 19.7858,
  },
  {
    tempC: 40,
    rhPercent: 20,
    saturationPa: 7383.46,
    dewPointC: 12.7831,
    humidityRatio: 0.0091982,
    absoluteHumidityGM3: 10.2175,
  },
  {
    tempC: -5,
    rhPercent: 70,
    saturationPa: 401.764,
    dewPointC: -9.1084,
    humidityRatio: 0.0017311,
    absoluteHumidityGM3: 2.2725,
  },
  {
    tempC: 2,
    rhPercent: 99,
    saturationPa: 705.954,
    dewPointC: 1.8594,
    humidityRatio: 0.0043197,
    absoluteHumidityGM3: 5.5036,
  },
];
