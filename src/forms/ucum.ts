import { UcumLhcUtils } from '@lhncbc/ucum-lhc';

/** Says what is wrong with a UCUM code in at most one sentence; empty when it is valid. */
export function ucumFault(code: string): string[] {
  const { status } = UcumLhcUtils.getInstance().validateUnitString(code);
  return status === 'valid' ? [] : [`found the unit "${code}", expected a valid UCUM code`];
}
