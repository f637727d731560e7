import '../src/host/read-data-early.ts';
import { defineBackground } from 'wxt/utils/define-background';
import { serveBackground } from '../src/host/serve-background.ts';

export default defineBackground(serveBackground);
