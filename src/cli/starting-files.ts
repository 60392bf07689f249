import { clinicText } from './starting-clinic.ts';

/** A file to be written. */
export interface StartingFile {
  path: string;
  text: string;
}

/** A commented starting file for each kind, by the id that it is for. */
export const startingFiles: Readonly<Record<string, (id: string) => StartingFile>> = {
  protocol: (id) => ({ path: `content/protocols/${id}.mdx`, text: protocolText(id) }),
  form: (id) => ({ path: `content/forms/${id}.yaml`, text: formText(id) }),
  clinic: (id) => ({ path: `content/clinics/${id}/clinic.yaml`, text: clinicText(id, titleOf(id)) }),
};

function protocolText(id: string): string {
  return `---
# The name shown, and the system: an id of content/vocabulary/systems.yaml and the name of this file.
title: ${titleOf(id)}
system: ${id}
# Place in the whole examination; lower comes earlier; no two pages share one.
order: 900
# One or two sentences for lists and look-up.
summary: What is examined here, in a sentence.
# Roles, not persons.
author: Role of the author
reviewer: Clinical review pending
reviewed: 2026-01-01
reviewDue: 2027-01-01
# Ids of content/sources.yaml.
sources: [common-practice]
---

Why this system is examined, what to look for from the door, and what must come before what.

<Manoeuvre id="${id}-inspection" title="Look at the ${titleOf(id).toLowerCase()}"
  synonyms="inspection; a lay word; a common misspelling"
  scope="screening" position="sitting" exposure="none" examiner="front"
  seconds="20" sides="none" sources="common-practice">

What question does this answer?

### Tell the patient
- I will look first. Tell me if it is sore.

### Technique
1. One action, with its landmark.
2. One action, with its pressure and how long.
3. Compare the two sides.

### Normal findings
- What is seen, felt or heard. A number is written as a value: Value tags with an id of content/values/.

### Abnormal findings
- A finding: what it suggests, most important first.

### Red flags
<RedFlag urgency="now" finding="A finding that cannot wait">What to do, and whom to call.</RedFlag>

### Cautions
- How this can hurt, and who should not have it.

### Common errors
- What learners get wrong, and what it does to the finding.

### Adaptations
- Cannot take the position: what to do instead.

<Record id="${id}-appearance" label="Appearance" kind="finding" normal="The words for normal" />
</Manoeuvre>
`;
}

function formText(id: string): string {
  return `# An examination: which manoeuvres it holds, and the version that its form will have.
id: ${id}
title: ${titleOf(id)}
# What it is for, and what it leaves out, said plainly.
purpose: What this examination is for.
leavesOut: What this examination leaves out.
# Every manoeuvre of these scopes (preparation, intake, screening, complete, extended) …
scopes: [preparation]
# … and single ones by id.
manoeuvres: []
# Permanent address of the form: never changed once released, never made from the site's address.
url: https://fingerbreadth.example/forms/${id}
version: 0.1.0
publisher: Fingerbreadth
copyright: CC BY 4.0, Fingerbreadth contributors
author: Role of the author
drafted: 2026-01-01
`;
}

function titleOf(id: string): string {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
