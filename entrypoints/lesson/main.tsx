import { render } from 'preact';
import { LessonPage } from '../../src/pages/lesson/lesson-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('ui.lessonPage'));
render(<LessonPage />, document.getElementById('lesson')!);
