/**
 * espeak-ng compiled to WebAssembly: its command, which runs once with the given arguments, and a file system in
 * memory.
 */
declare module 'espeak-ng' {
  interface Run {
    readonly FS: {
      writeFile(path: string, text: string): void;
      stat(path: string): { readonly size: number };
      readFile(path: string, options: { readonly encoding: 'utf8' }): string;
    };
  }
  export default function run(options: {
    readonly arguments: readonly string[];
    readonly preRun: readonly ((run: Run) => void)[];
  }): Promise<Run>;
}
