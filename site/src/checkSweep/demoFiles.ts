/** The demo's job and its recordings, loaded only when they are asked for. */
export async function demoFiles(): Promise<readonly File[]> {
  const [job, sound, worn, slow] = await Promise.all([
    import('../../../examples/outboard-sensor.job.json?raw'),
    import('../../../examples/recordings/sound.csv?raw'),
    import('../../../examples/recordings/worn.csv?raw'),
    import('../../../examples/recordings/too-slow.csv?raw'),
  ]);
  const file = (name: string, { default: text }: { readonly default: string }) =>
    new File([text], name);
  return [
    file('outboard-sensor.job.json', job),
    file('sound.csv', sound),
    file('worn.csv', worn),
    file('too-slow.csv', slow),
  ];
}
