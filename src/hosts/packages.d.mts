/** Whether node_modules holds what the lock file names, whoever put it there. */
export function packagesAreThere(root: string): boolean;
