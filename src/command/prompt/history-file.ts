/** The file of the history: in the folder that the system keeps such things in. */
export function historyFile(
  platform: string,
  env: Readonly<Record<string, string | undefined>>,
  home: string,
): string {
  if (platform === 'win32') {
    return `${env['LOCALAPPDATA'] || `${home}\\AppData\\Local`}\\crankwright\\history`;
  }
  return `${env['XDG_STATE_HOME'] || `${home}/.local/state`}/crankwright/history`;
}
