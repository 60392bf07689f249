/** What is wrong with the settings that a build takes from its environment, a sentence each; empty when nothing is. */
export function settingFaults(environment: Readonly<Record<string, string | undefined>>): string[] {
  const { PORT: port, BASE_PATH: base, SITE_URL: site } = environment;
  const faults: string[] = [];
  if (port !== undefined && !(/^\d+$/.test(port) && Number(port) <= 65535))
    faults.push(`PORT is "${port}"; expected a whole number from 0 to 65535, for example 8080.`);
  if (base !== undefined && !/^\/?([\w.~-]+\/)*[\w.~-]*$/.test(base))
    faults.push(`BASE_PATH is "${base}"; expected a path such as /x/.`);
  if (site !== undefined && site !== '' && !/^https?:$/.test(URL.parse(site)?.protocol ?? ''))
    faults.push(`SITE_URL is "${site}"; expected an address such as https://example.org.`);
  return faults;
}
