declare module 'subset-font' {
  /** Returns `font` with the glyphs of `text` alone. */
  export default function subsetFont(
    font: Buffer,
    text: string,
    options: { targetFormat: 'woff2' | 'truetype'; noHinting: boolean; keepFeatures?: string[] },
  ): Promise<Buffer>;
}
