/** What can hurt where a question is asked, in our own words; each defers to who knows the place. */
export const CAUTIONS = [
  {
    id: 'hoist-balance',
    words:
      'Taking parts off shifts the centre of gravity on the hoist, sometimes critically. Follow the instructions of the lift and the vehicle, use the maker’s lifting points, never exceed the rating of the lift or of one arm, set the mechanical locks and use high-reach stands before working below. Trained, authorised people only; local rules come first.',
    source: 'ANSI/ALI ALIS:2022 (installation and service of vehicle lifts), in our own words',
  },
  {
    id: 'axle-lift',
    words:
      'Raising one axle for the height of the centre of gravity: block the wheels that stay down, block the suspension, keep people clear of the vehicle and of its path, raise no further than needed. Local rules and the instructions of the lifting gear come first.',
    source: 'common practice, no source',
  },
  {
    id: 'high-voltage',
    words:
      'A traction battery is never without voltage. Work on it is for licensed people under local rules and the maker’s instructions; this tool records and reminds, no more.',
    source: 'common practice, no source',
  },
  {
    id: 'lifting-by-hand',
    words:
      'Heavy or hot parts: use lifting aids and a second person; local rules on handling loads come first.',
    source: 'common practice, no source',
  },
  {
    id: 'pressure-test',
    words:
      'An enclosure under test pressure pushes on its lid with the force shown here and stores energy: stand clear of lid, ports and plugs, fit a relief valve below the opening pressure of the vents, raise the pressure slowly, let it down before anything is loosened, never exceed what the maker allows. Trained people only; local rules on pressure tests come first.',
    source: 'common practice, no source',
  },
  {
    id: 'sealed-by-judgement',
    words:
      'No standard gives a limit of leakage for such enclosures: the limit is yours. A number below it is no proof that water stays out; test the enclosure in water as the product needs it.',
    source: 'common practice, no source',
  },
  {
    id: 'bolt-tightening',
    words:
      'Torque and preload of a joint that holds people or loads are set by its maker. Take this as an estimate, renew fasteners where the maker says so, and have such joints tightened and checked by trained people.',
    source: 'common practice, no source',
  },
] as const;
