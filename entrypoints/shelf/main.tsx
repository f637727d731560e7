import { render } from 'preact';
import { ShelfPage } from '../../src/shelf/shelf-page.tsx';

render(<ShelfPage />, document.getElementById('shelf')!);
