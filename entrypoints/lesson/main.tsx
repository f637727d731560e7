import { render } from 'preact';
import { LessonPage } from '../../src/lesson-page/lesson-page.tsx';

render(<LessonPage />, document.getElementById('lesson')!);
