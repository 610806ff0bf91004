/** The assemblies of VAN-27 (invented): two-digit number and name. */
export const ASSEMBLIES = {
  '10': 'body structure',
  '11': 'closures',
  '12': 'glazing',
  '20': 'exterior',
  '30': 'interior and cargo',
  '40': 'traction battery',
  '50': 'drive unit, power electronics',
  '60': 'front suspension and cradle',
  '61': 'rear suspension and cradle',
  '62': 'wheels and tyres',
  '63': 'brakes',
  '64': 'steering',
  '70': 'thermal and climate',
  '80': 'low-voltage electrical',
  '90': 'fluids',
  '95': 'fasteners, sealants',
} as const;
