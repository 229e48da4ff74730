/** Commands that pack a lesson for a school's system. */
import type { AppFile, PackageSettings, PackageWords } from '../../core/records';
import type { Ports } from '../ports';
import type { AppStore } from '../store';

export function createPackageCommands(_store: AppStore, { packages }: Pick<Ports, 'packages'>) {
  return {
    files: (): Promise<readonly AppFile[] | null> => packages.files(),
    make: (
      files: readonly AppFile[],
      settings: PackageSettings,
      words: PackageWords,
      onProgress: (done: number, count: number) => void,
    ): Promise<Blob> => packages.make(files, settings, words, onProgress),
  };
}
