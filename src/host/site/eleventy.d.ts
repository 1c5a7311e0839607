/** What we use of Eleventy, which ships no types. */
declare module '@11ty/eleventy' {
  export interface UserConfig {
    readonly ignores: Set<string>;
    readonly benchmarkManager: { get(group: string): { setMinimumThresholdPercent(percent: number): void } };
    readonly frontMatterParsingOptions: { readonly engines: Record<string, unknown> };
    readonly directories: { readonly output: string };
    setUseGitIgnore(use: boolean): void;
    setUseTemplateCache(use: boolean): void;
    setTemplateFormats(formats: readonly string[]): void;
    setDataFileSuffixes(suffixes: readonly string[]): void;
    setNunjucksEnvironmentOptions(options: object): void;
    setQuietMode(quiet: boolean): void;
    addGlobalData(name: string, data: unknown): void;
    addNunjucksGlobal(name: string, value: object): void;
    addPlugin(plugin: unknown, options?: object): void;
    on(event: 'eleventy.after', then: () => Promise<void> | void): void;
  }
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        readonly configPath?: string;
        readonly quietMode?: boolean;
        readonly source?: 'script' | 'cli';
        readonly config?: (config: UserConfig) => Promise<void> | void;
      },
    );
    /** Its errors are thrown as well; its summary would stand in the way of ours. */
    disableLogger(): void;
    write(): Promise<readonly [readonly unknown[], readonly unknown[]]>;
  }
}

declare module '@11ty/eleventy-plugin-syntaxhighlight' {
  const plugin: unknown;
  export default plugin;
}
