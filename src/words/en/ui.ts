/** Words of the interface. */
export default {
  'app.name': 'Drumbench',
} as const;
