/** A first plan, to be changed: it compiles without a finding, and every line says what it is for. */
export const STARTER = `# A small bench for the hall. Everything behind a # is a note to yourself.
# Change a size, run "boardwright build" again, and every other number follows.

plan: 1                          # the version of the language
title: Hall bench
units: inch                      # or mm

outside:                         # over everything; formulas may ask for outside.left, outside.top ...
  width:  { value: 36, from: 24, to: 48, ask: "How long is the bench?" }
  depth:  11 1/4
  height: { value: 17, from: 14, to: 19, ask: "How high is the seat?" }

sizes:                           # measures of your own, used by name below
  overhang: 4                    # how far the seat stands out past the legs

stock:                           # the wood, by a name that you give it
  plank: { sold as: 2x12, wood: douglas fir }
  strip: { sold as: 2x4, wood: douglas fir }

piece:                           # every part: what it is made of, how it lies, where it is
  seat:
    made of: plank
    as: lying flat
    left: outside.left
    right: outside.right
    front: outside.front
    top: outside.top

  left-leg:
    made of: plank
    as: upright
    facing: left                 # its broad side looks to the left
    left: outside.left + overhang
    front: outside.front
    up from floor: 0
    under: seat                  # it ends where the seat begins

  right-leg: { mirror of: left-leg, about: across }    # the same with left and right swapped

  rail:                          # keeps the legs from racking
    made of: strip
    as: on edge
    between: [left-leg, right-leg]
    under: seat
    deep: middle

joints:                          # what holds what; where they touch is computed
  - { join: seat, to: [left-leg, right-leg], with: screws, count: 3 }
  - { join: [left-leg, right-leg], to: rail, with: screws, count: 2 }
`;
