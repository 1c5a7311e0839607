/** What was claimed before the first run, and once after the spin trials. */
export const claimsText = `---
claims:
  - id: CL-1
    sentence: "The deep bowl P1, filled to the level of the pressed bowl P0, settles at least 5 K lower."
    made: 2026-02-18
    by: supplier
    of: { article: P1, fill: 3.59 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: final-rise
    direction: lower
    by-at-least: 5 K
  - id: CL-2
    sentence: "P1 at the level of P0 runs cooler because it makes less heat: at least half of the difference is heat not made."
    made: 2026-02-18
    by: supplier
    of: { article: P1, fill: 3.59 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: makes-less-share
    direction: at-least
    by-at-least: 50 %
  - id: CL-3
    sentence: "The shroud P4 cuts spin power by at least 15 W at 290 rpm and 60 °C."
    made: 2026-02-27
    of: { article: P4, fill: 2.40 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: spin-power
    direction: lower
    by-at-least: 15 W
    at: { wheel-speed: 290 rpm, sump: 60 °C }
  - id: CL-4
    sentence: "P4 keeps the pinion bearing within 2 K of P0, level and 12 % nose up."
    made: 2026-02-27
    clauses:
      - of: { article: P4, fill: 2.40 L, oil: O1 }
        against: { article: P0, fill: 2.40 L, oil: O1 }
        quantity: bearing-rise
        direction: within
        by-at-least: 2 K
      - of: { article: P4, fill: 2.40 L, oil: O1, tilt: 12 % }
        against: { article: P0, fill: 2.40 L, oil: O1, tilt: 12 % }
        quantity: bearing-rise
        direction: within
        by-at-least: 2 K
  - id: CL-5
    sentence: "The catch tray P2 settles at least 1.5 K lower than P0."
    made: 2026-02-27
    of: { article: P2, fill: 2.40 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: final-rise
    direction: lower
    by-at-least: 1.5 K
  - id: CL-6
    sentence: "With 3.20 L in it instead of 2.40 L, P0 takes longer to reach 95 °C."
    made: 2026-02-24
    by: operator
    of: { article: P0, fill: 3.20 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: limit-crossing
    direction: higher
    at: { limit: 95 °C }
  - id: CL-6b
    sentence: "With 3.20 L in it instead of 2.40 L, P0 takes more to spin at 290 rpm and 60 °C."
    made: 2026-02-27
    of: { article: P0, fill: 3.20 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: spin-power
    direction: higher
    at: { wheel-speed: 290 rpm, sump: 60 °C }
  - id: CL-7
    sentence: "The moulded bowl P3 settles hotter than P0."
    made: 2026-02-25
    by: reader
    of: { article: P3, fill: 2.40 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: final-rise
    direction: higher
  - id: CL-7b
    sentence: "P3 settles hotter than P0 by 2 K or more."
    made: 2026-02-27
    of: { article: P3, fill: 2.40 L, oil: O1 }
    against: { article: P0, fill: 2.40 L, oil: O1 }
    quantity: final-rise
    direction: higher
    by-at-least: 2 K
  - id: CL-8
    sentence: "Thinner oil in the pressed bowl saves more spin power at 290 rpm and 60 °C than any of the parts does at the same level."
    made: 2026-04-18
    by: reader
    clauses:
${['P1, fill: 3.59 L', 'P2, fill: 2.40 L', 'P3, fill: 2.40 L', 'P4, fill: 2.40 L']
  .map(
    (part) => `      - of: { article: P0, fill: 2.40 L, oil: O2 }
        against: { article: ${part}, oil: O1 }
        quantity: spin-power
        direction: lower
        at: { wheel-speed: 290 rpm, sump: 60 °C }
`,
  )
  .join('')}questions:
  - id: Q-1
    text: "Where does the oil stand, and does it reach the pinion?"
    raised-by: house
    raised-on: 2026-02-27
    kind: flow
  - id: Q-2
    text: "Does a fuller bowl run hotter?"
    raised-by: operator
    raised-on: 2026-02-24
    kind: heat
  - id: Q-3
    text: "Does the shape of a part move the oil elsewhere?"
    raised-by: house
    raised-on: 2026-03-10
    kind: flow
  - id: Q-4
    text: "Does less splash leave the pinion bearing short?"
    raised-by: reader
    raised-on: 2026-03-14
    kind: flow
  - id: Q-5
    text: "What do the shapes and the litres take to turn, at three temperatures and with two oils?"
    raised-by: house
    raised-on: 2026-03-24
    kind: loss
  - id: Q-6
    text: "Is 28 W worth anything?"
    raised-by: operator
    raised-on: 2026-04-29
    kind: cost
  - id: Q-7
    text: "How fast does each heat up under load, and how much does it shed?"
    raised-by: house
    raised-on: 2026-04-30
    kind: heat
  - id: Q-8
    text: "Why does the catch tray look so good, with no more surface than the plain bowl?"
    raised-by: house
    raised-on: 2026-06-19
    kind: heat
  - id: Q-9
    text: "Does the pinion still get its oil with the nose up?"
    raised-by: operator
    raised-on: 2026-03-18
    kind: flow
  - id: Q-10
    text: "Does any of them wear the gears?"
    raised-by: reader
    raised-on: 2026-07-01
    kind: wear
    handed-on: { on: 2026-08-11, to: "whoever can run hundreds of hours", why: "no run here is longer than two and a half hours under load" }
  - id: Q-11
    text: "Is a second bowl from the same shelf the same bowl?"
    raised-by: reader
    raised-on: 2026-05-20
    kind: other
  - id: Q-12
    text: "What happens in frost?"
    raised-by: operator
    raised-on: 2026-03-12
    kind: loss
    dropped: { on: 2026-08-11, why: "the bench cannot be cooled below 15 °C; the oil sheet says what the oil does there, and no run stands behind it" }
shown-to: public
---
All but the last were written down before the first run: the supplier's from the leaflet that came with the deep bowl, the operator's and the reader's from letters, the rest by the house at the bench table on the Friday before. The smallest difference that matters was agreed with whoever put the claim, and where they named none any difference counts.

The operator's claim about the fuller bowl is about time alone. Someone else at the table said that it would cost current all the same, so CL-6b stands beside it. CL-7b is the house asking the reader's question again with a size in it.

CL-8 came in a letter after the spin trials were done and their first figures told. It is kept, with its date.
`;
