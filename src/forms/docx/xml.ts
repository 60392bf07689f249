import { BuilderElement, type XmlComponent } from 'docx';

/** An element of WordprocessingML that the library has no class for. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | number>> = {},
  children: readonly XmlComponent[] = [],
): BuilderElement {
  const keyed = Object.fromEntries(Object.entries(attributes).map(([key, value]) => [key, { key, value }]));
  return new BuilderElement({ name, attributes: keyed, children });
}
