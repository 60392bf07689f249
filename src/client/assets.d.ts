/** A file that the bundler puts beside the scripts, as its address. */
declare module '*?url' {
  const address: string;
  export default address;
}
