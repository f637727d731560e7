import './masthead.css';

/** The wide pages of the extension, in the order of the work. */
const PAGES = [
  { name: 'Groups', address: '/groups.html' },
  { name: 'Shelf', address: '/shelf.html' },
  { name: 'Desk', address: '/desk.html' },
  { name: 'Lesson', address: '/lesson.html' },
] as const;

/** The head of a wide page: its name, and the way to the others. */
export function Masthead({ title }: { title: string }) {
  return (
    <header class="masthead">
      <div class="masthead-line">
        <p class="brand">Wordreach</p>
        <nav class="masthead-pages" aria-label="Pages of Wordreach">
          {PAGES.map(({ name, address }) => (
            <a key={name} class="plain" href={address} aria-current={name === title ? 'page' : undefined}>
              {name}
            </a>
          ))}
        </nav>
      </div>
      <h1>{title}</h1>
    </header>
  );
}
