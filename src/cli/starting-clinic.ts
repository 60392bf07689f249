/** The commented starting file of a clinic's edition: `id` is that of its folder. */
export const clinicText = (id: string, title: string): string => `${headText(id, title)}
${formsText(id)}`;

/** Whose edition it is, whom to call, what is said and shown otherwise. */
const headText = (
  id: string,
  title: string,
): string => `# A clinic's edition of the library: the same pages, with its contacts, notes and forms. Build it with
# CLINIC=${id} npm run build. Cautions and red flags cannot be hidden, and no shared item can be changed.
id: ${id}
name: ${title}
# Name for narrow places and beside what is the clinic's own.
short: ${title}
# A drawing beside this file, plain SVG without text, at most 20 KB.
# logo: logo.svg
# Size of paper that the printer takes: a4 or letter.
paper: a4

# Whom to call for a red flag: now (stop and act), today (same-day senior review), soon (an appointment).
# What is left out is printed as a blank line, and pages say "not given: ask".
contacts: []
#  - urgency: now
#    day: Role and number by day
#    outOfHours: Role and number out of hours
# safeguarding: Role and number
# selfHarm: Role and number
# Day on which somebody last rang them all.
# contactsChecked: 2026-01-01

# Local notes by manoeuvre id; pages and forms say that they are the clinic's own.
notes: {}
#  jugular-venous-pressure: Where the two straight edges are kept.

# Local orders: one manoeuvre after another, when both are done.
order: []
#  - manoeuvre: trachea
#    after: neck-nodes

# Manoeuvres left off all of the clinic's forms; they stay listed there, with their cautions and red flags.
hidden: []
# Tools (content/vocabulary/tools.yaml) left out of the site.
toolsLeftOut: []
`;

/** Pinned releases and the clinic's own forms. */
const formsText = (
  id: string,
): string => `# Release of each shared form that the clinic uses, and builds its own on. To upgrade, read what changed
# (npm run form -- diff FORM@OLD FORM@NEW), raise the number, and run the check: what no longer fits is named.
pins: {}
#  adult-screening: 1.0.0

# The clinic's own forms, each made from a pinned one. Release one with CLINIC=${id} npm run form -- release FORM.
forms: []
#  - form: adult-screening
#    # Permanent address of the clinic's form: never changed once released.
#    url: https://${id}.example/forms/adult-screening
#    version: 1.0.0
#    author: Role of who adapted it
#    drafted: 2026-01-01
#    # Manoeuvres and records that this form leaves out.
#    hidden: []
#    hiddenRecords: []
#    # Fields added, always optional: with which manoeuvre, behind which of its records, and the record
#    # (kinds: finding, scale, choice, quantity, text). Its id begins with "${id}-" and is never used anew.
#    added:
#      - manoeuvre: gait
#        after: gait-walking-aid
#        record:
#          id: ${id}-falls
#          label: Falls in the last 12 months
#          kind: choice
#          options: [none, one, two or more]
#          normal: none
`;
