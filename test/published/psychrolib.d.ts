/** The part of the psychrometrics library that the checks call; SI units once set. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(units: number): void;
    GetSatVapPres(tempC: number): number;
    GetTDewPointFromRelHum(tempC: number, relativeHumidity: number): number;
    GetHumRatioFromRelHum(tempC: number, relativeHumidity: number, pressurePa: number): number;
    GetVapPresFromRelHum(tempC: number, relativeHumidity: number): number;
  };
  // biome-ignore lint/style/noDefaultExport: the library is a CommonJS module
  export default psychrolib;
}
