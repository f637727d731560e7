import './masthead.css';
import { say } from '../wording/say.ts';

/** The wide pages of the extension, in the order of the work. */
const PAGES = [
  { page: 'groups', name: 'ui.groupsPage', address: '/groups.html' },
  { page: 'shelf', name: 'ui.shelfPage', address: '/shelf.html' },
  { page: 'desk', name: 'ui.deskPage', address: '/desk.html' },
  { page: 'lesson', name: 'ui.lessonPage', address: '/lesson.html' },
  { page: 'help', name: 'ui.helpPage', address: '/help.html' },
] as const;

/** The header of a wide page: its name, and links to the wide pages. The page itself may be among them. */
export function Masthead({ title, page }: { title: string; page?: (typeof PAGES)[number]['page'] }) {
  return (
    <header class="masthead">
      <div class="masthead-line">
        <p class="brand">Wordreach</p>
        <nav class="masthead-pages" aria-label={say('ui.pages')}>
          {PAGES.map(({ page: other, name, address }) => (
            <a key={other} class="plain" href={address} aria-current={other === page ? 'page' : undefined}>
              {say(name)}
            </a>
          ))}
        </nav>
      </div>
      <h1>{title}</h1>
    </header>
  );
}
