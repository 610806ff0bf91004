import packageFile from '../../package.json' with { type: 'json' };

/** Version of the program, as in package.json. */
export const VERSION: string = packageFile.version;
