/** Notice that LOINC's licence asks for, word for word, wherever a code stands. Source: LOINC and RELMA terms of use. */
export const loincNotice =
  'This material contains content from LOINC (http://loinc.org). LOINC is copyright © Regenstrief Institute, Inc. and the Logical Observation Identifiers Names and Codes (LOINC) Committee and is available at no cost under the license at http://loinc.org/license. LOINC® is a registered United States trademark of Regenstrief Institute, Inc.';

/**
 * Check digit of the number before a LOINC code's hyphen.
 * Source: LOINC Users' Guide, "Calculating Mod 10 Check Digits".
 */
export function loincCheckDigit(number: string): number {
  const fromRight = Array.from(number).reverse();
  const odd = fromRight.filter((_, index) => index % 2 === 0).join('');
  const even = fromRight.filter((_, index) => index % 2 === 1).join('');
  const sum = Array.from(`${even}${Number(odd) * 2}`, Number).reduce((total, digit) => total + digit, 0);
  return (10 - (sum % 10)) % 10;
}

/** Whether a code has LOINC's shape and the right check digit. */
export function isLoincCode(code: string): boolean {
  const [, number, digit] = /^(\d{1,7})-(\d)$/.exec(code) ?? [];
  return number !== undefined && loincCheckDigit(number) === Number(digit);
}
