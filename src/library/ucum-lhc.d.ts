declare module '@lhncbc/ucum-lhc' {
  /** The part of the UCUM library that this project uses. */
  export class UcumLhcUtils {
    static getInstance(): UcumLhcUtils;
    validateUnitString(
      unit: string,
      suggest?: boolean,
    ): { status: 'valid' | 'invalid' | 'error'; suggestions?: { units: [string, string, string][] }[] | null };
    convertUnitTo(
      from: string,
      value: number,
      to: string,
    ): { status: 'succeeded' | 'failed' | 'error'; toVal: number | null; msg: string[] };
  }
}
