/** The settled shot as simulated runs tell it: what the table does not know, and why the level value differs. */
const settled = {
  'settled.no-fit': 'the machine brings no table of simulated runs',
  'settled.other-chamber': 'the simulated runs were made in another chamber',
  'settled.other-baffle': 'the simulated runs were made with another baffle, or with it in another place',
  'settled.other-balls': 'the simulated runs were made with other balls',
  'settled.outside-fill': 'the table holds fills from {{low}} to {{high}}, and this is {{found}}',
  'settled.outside-time_s':
    'the table holds times to full speed from {{low}} s to {{high}} s, and this is {{found}} s',
  'settled.outside-friction': 'the table holds friction from {{low}} to {{high}}, and this is {{found}}',
  'settled.outside-spin_up.kind': 'the table holds no runs of this kind of spin-up',
  'settled.no-level-radii':
    'the settled shot has no level surface, so the radii of its surfaces do not exist',
  'settled.level-agrees': 'the level value lies within the band: here the shot lies nearly as a liquid would',
  'settled.level-above':
    'the level value is higher because it lets the shot run to its level like a liquid, while real shot jams by friction and freezes as a thin coat round the wall',
  'settled.level-below':
    'the level value is lower because it lets the shot settle like a liquid, while real shot freezes where it lies, farther out than a level surface would have it',
} as const satisfies Readonly<Record<string, string>>;

export default settled;
